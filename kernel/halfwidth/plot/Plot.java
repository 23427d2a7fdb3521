package halfwidth.plot;

public final class Plot {
    public byte[] png(int w, int h, double s) {
        return new byte[0];
    }
}
