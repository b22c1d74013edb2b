package brakewright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.BufferedReader;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * A browser without a window, which is asked over its DevTools protocol: one process for all pages.
 *
 * <p>Source: Chrome DevTools Protocol 1.3; the frames of RFC 6455, The WebSocket Protocol, 2011.
 */
final class Browser implements AutoCloseable {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome");

    private final Process process;
    private final Socket socket;
    private final DataInputStream in;
    private final OutputStream out;
    private final List<String> complaints = new ArrayList<>();
    private String session = "";
    private int last;

    private Browser(Process process, URI address) throws IOException {
        this.process = process;
        this.socket = new Socket(address.getHost(), address.getPort());
        this.socket.setSoTimeout(20_000);
        this.socket.setTcpNoDelay(true);
        this.in = new DataInputStream(socket.getInputStream());
        this.out = socket.getOutputStream();
        out.write(
                ("GET "
                                + address.getPath()
                                + " HTTP/1.1\r\nHost: "
                                + address.getAuthority()
                                + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                                + "Sec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n"
                                + "Sec-WebSocket-Version: 13\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            head.append((char) in.readUnsignedByte());
        }
        if (!head.toString().contains(" 101 ")) {
            throw new IOException("the browser does not answer: " + head);
        }
        String target = ask("Target.createTarget", "\"url\":\"about:blank\"", "targetId");
        session =
                ask(
                        "Target.attachToTarget",
                        "\"targetId\":\"" + target + "\",\"flatten\":true",
                        "sessionId");
        for (String domain : List.of("Page", "Runtime", "Log")) {
            ask(domain + ".enable", "", "");
        }
    }

    /** Starts one with an empty profile in a folder; empty where there is none. */
    static Optional<Browser> start(Path folder) throws IOException {
        for (String name : NAMES) {
            Optional<Process> process = started(name, folder);
            if (process.isPresent()) {
                BufferedReader told =
                        new BufferedReader(
                                new InputStreamReader(
                                        process.get().getErrorStream(), StandardCharsets.UTF_8));
                for (String line = told.readLine(); line != null; line = told.readLine()) {
                    int address = line.indexOf("ws://");
                    if (address >= 0) {
                        return Optional.of(
                                new Browser(
                                        process.get(),
                                        URI.create(line.substring(address).strip())));
                    }
                }
                throw new IOException(name + " ended before it could be asked");
            }
        }
        return Optional.empty();
    }

    private static Optional<Process> started(String name, Path folder) {
        try {
            return Optional.of(
                    new ProcessBuilder(
                                    name,
                                    "--headless=new",
                                    "--no-sandbox",
                                    "--disable-gpu",
                                    "--disable-extensions",
                                    "--disable-background-networking",
                                    "--no-first-run",
                                    "--user-data-dir=" + folder,
                                    "--remote-debugging-port=0",
                                    "about:blank")
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start());
        } catch (IOException missing) {
            return Optional.empty();
        }
    }

    /** Shows a file. */
    void open(Path file) throws IOException {
        ask("Page.navigate", "\"url\":" + quoted(file.toUri().toString()), "");
        while (!"complete".equals(value("document.readyState"))
                || !value("location.href").endsWith(String.valueOf(file.getFileName()))) {
            Thread.onSpinWait();
        }
    }

    /** As wide as that, light or dark, as on a screen or on paper. */
    void look(int wide, boolean isDark, boolean isPaper) throws IOException {
        ask(
                "Emulation.setDeviceMetricsOverride",
                "\"width\":" + wide + ",\"height\":900,\"deviceScaleFactor\":1,\"mobile\":false",
                "");
        ask(
                "Emulation.setEmulatedMedia",
                "\"media\":\""
                        + (isPaper ? "print" : "screen")
                        + "\",\"features\":[{\"name\":\"prefers-color-scheme\",\"value\":\""
                        + (isDark ? "dark" : "light")
                        + "\"}]",
                "");
    }

    /** What an expression comes to, as text. */
    String value(String expression) throws IOException {
        return ask(
                "Runtime.evaluate",
                "\"returnByValue\":true,\"expression\":" + quoted("String(" + expression + ")"),
                "value");
    }

    /** Prints on paper of that size [in]. */
    byte[] printed(double wide, double high) throws IOException {
        return Base64.getDecoder()
                .decode(
                        ask(
                                "Page.printToPDF",
                                "\"printBackground\":true,\"preferCSSPageSize\":false,\"paperWidth\":"
                                        + wide
                                        + ",\"paperHeight\":"
                                        + high,
                                "data"));
    }

    /** What pages complained of so far. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    private static String quoted(String text) {
        return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** Sends a request and waits for its answer; what comes between is an event. */
    private String ask(String method, String parameters, String wanted) throws IOException {
        int id = ++last;
        send(
                "{\"id\":"
                        + id
                        + (session.isEmpty() ? "" : ",\"sessionId\":\"" + session + '"')
                        + ",\"method\":\""
                        + method
                        + "\",\"params\":{"
                        + parameters
                        + "}}");
        while (true) {
            String message = receive();
            if (message.startsWith("{\"id\":" + id + ",")) {
                if (message.startsWith("\"error\"", message.indexOf(',') + 1)
                        || message.contains("\"exceptionDetails\"")) {
                    throw new IOException(method + ": " + message);
                }
                return wanted.isEmpty() ? "" : field(message, wanted);
            }
            if (message.contains("\"method\":\"Log.entryAdded\"")
                    || message.contains("\"method\":\"Runtime.consoleAPICalled\"")
                    || message.contains("\"method\":\"Runtime.exceptionThrown\"")) {
                complaints.add(message);
            }
        }
    }

    private static String field(String message, String name) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(message)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME && parser.currentName().equals(name)) {
                    parser.nextToken();
                    return parser.getText();
                }
            }
        }
        throw new IOException("no " + name + " in " + message);
    }

    private void send(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        ByteBuffer frame = ByteBuffer.allocate(bytes.length + 14);
        frame.put((byte) 0x81);
        if (bytes.length < 126) {
            frame.put((byte) (0x80 | bytes.length));
        } else if (bytes.length < 65_536) {
            frame.put((byte) 0xFE).putShort((short) bytes.length);
        } else {
            frame.put((byte) 0xFF).putLong(bytes.length);
        }
        // masked with nothing, which leaves the bytes as they are
        frame.putInt(0).put(bytes);
        out.write(frame.array(), 0, frame.position());
        out.flush();
    }

    private String receive() throws IOException {
        StringBuilder text = new StringBuilder();
        while (true) {
            int first = in.readUnsignedByte();
            int length = in.readUnsignedByte();
            long bytes =
                    length < 126 ? length : length == 126 ? in.readUnsignedShort() : in.readLong();
            text.append(new String(in.readNBytes((int) bytes), StandardCharsets.UTF_8));
            if ((first & 0x80) != 0) {
                return text.toString();
            }
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        try {
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Deletes what a browser leaves in its folder, as far as it lets go of it. */
    static void forget(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            files.sorted(java.util.Comparator.reverseOrder())
                    .map(Path::toFile)
                    .forEach(java.io.File::delete);
        }
    }
}
