package halfwidth.bounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How a list of what page code may use is read. */
class AllowListTest {
    private static final AllowList LIST =
            new AllowList(
                    List.of(
                            "# A note.",
                            "^ java.lang.Object | * | what every class extends",
                            "+ java.util.List | * | collections",
                            "+ java.lang.System | arraycopy | copies",
                            "+ java.util.function.* | * | lambdas",
                            "~ java.util.Map | of | for the program",
                            "- java.util.Collection | parallelStream | Use stream().",
                            "- java.util.function.Supplier | * | Use a value.",
                            "- java.lang.* | * | Less of the language.",
                            "- java.lang.System | * | Nothing of the machine."));

    @Test
    void listedClassMayBeUsedAndNoOther() {
        assertTrue(LIST.type("java.util.List"));
        assertTrue(LIST.member("java.util.List", "size"));
        assertFalse(LIST.type("java.util.ArrayList"));
        assertFalse(LIST.member("java.util.ArrayList", "size"));
    }

    @Test
    void onlyNamedMembersOfAClassAreListed() {
        assertTrue(LIST.member("java.lang.System", "arraycopy"));
        assertFalse(LIST.member("java.lang.System", "exit"));
    }

    @Test
    void packageListsItsClassesAndNoneBelowIt() {
        assertTrue(LIST.type("java.util.function.Function"));
        assertFalse(LIST.type("java.util.function.deeper.Function"));
        assertFalse(LIST.type("java.util.functional"));
    }

    @Test
    void classOfAListedPackageCanBeBarred() {
        assertFalse(LIST.type("java.util.function.Supplier"));
    }

    @Test
    void barredMemberIsBarredInEverySubtype() {
        assertFalse(LIST.member("java.util.List", "parallelStream"));
        assertTrue(LIST.member("java.util.List", "stream"));
    }

    @Test
    void onlyWhatIsMarkedMayBeExtendedOrIsTheProgramsOwn() {
        assertTrue(LIST.mayBeExtended("java.lang.Object"));
        assertFalse(LIST.mayBeExtended("java.util.List"));
        assertTrue(LIST.ofProgram("java.util.Map"));
        assertFalse(LIST.ofProgram("java.util.List"));
    }

    @Test
    void adviceIsThatOfTheNearestEntry() {
        assertEquals("Nothing of the machine.", LIST.advice("java.lang.System", "exit"));
        assertEquals("Less of the language.", LIST.advice("java.lang.Thread", "<init>"));
        assertEquals("Use stream().", LIST.advice("java.util.Collection", "parallelStream"));
    }

    @Test
    void entryWithoutAReasonIsRefused() {
        assertThrows(
                IllegalStateException.class,
                () -> new AllowList(List.of("+ java.util.List | * |")));
    }

    @Test
    void everyClassAndMemberOfTheProgramsListIsThere() {
        AllowList ours = AllowList.ours();
        List<String> unknown =
                ours.names().stream()
                        .filter(name -> !name.endsWith("."))
                        .filter(
                                name ->
                                        !name.matches(
                                                ".*Sequenced.*|.*SwitchBootstraps|.*MatchException"))
                        .filter(name -> !exists(name))
                        .toList();
        assertEquals(List.of(), unknown);
    }

    private static boolean exists(String name) {
        try {
            Class.forName(name, false, AllowListTest.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }
}
