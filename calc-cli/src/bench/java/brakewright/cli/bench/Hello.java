package brakewright.cli.bench;

/** What a process of this machine and these flags costs at the least. */
public final class Hello {

    private Hello() {}

    /**
     * Prints one word.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        System.out.println("Hello");
    }
}
