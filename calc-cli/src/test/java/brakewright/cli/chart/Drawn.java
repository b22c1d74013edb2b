package brakewright.cli.chart;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing as any reader of XML has it. */
final class Drawn {

    static {
        Module own = Drawn.class.getModule();
        ModuleLayer.boot().findModule("java.xml").ifPresent(own::addReads);
    }

    private final Document document;

    Drawn(Chart chart) {
        try {
            document =
                    DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(chart.document())));
        } catch (Exception broken) {
            throw new AssertionError("the drawing is no XML", broken);
        }
    }

    List<Element> all(String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    Element only(String name) {
        return all(name).get(0);
    }

    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    /** Around every text, as wide as a wide face makes it. */
    List<Box> boxes() {
        return all("text").stream().map(Drawn::box).toList();
    }

    private static Box box(Element text) {
        double x = Double.parseDouble(text.getAttribute("x"));
        double wide = Lettering.width(text.getTextContent());
        double left =
                switch (text.getAttribute("text-anchor")) {
                    case "end" -> x - wide;
                    case "middle" -> x - wide / 2.0;
                    default -> x;
                };
        return Box.ofText(text.getTextContent(), left, Double.parseDouble(text.getAttribute("y")));
    }

    Box frame() {
        String[] edges = only("svg").getAttribute("viewBox").split(" ");
        return new Box(0.0, 0.0, Double.parseDouble(edges[2]), Double.parseDouble(edges[3]));
    }
}
