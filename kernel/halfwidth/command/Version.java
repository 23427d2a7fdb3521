package halfwidth.command;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from its jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"Halfwidth " + text()};
    }

    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
