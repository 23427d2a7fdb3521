package halfwidth.command;

import halfwidth.run.Confinement;
import picocli.CommandLine.IVersionProvider;

/** The program's version, from its jar, and what holds its workers. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"Halfwidth " + text(), Confinement.ofThisSystem().told()};
    }

    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
