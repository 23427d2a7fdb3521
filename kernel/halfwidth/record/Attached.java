package halfwidth.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads what is attached to a record: a sheet is well-formed XML, so any XML reader can. */
final class Attached {
    /** What the id of an array's file begins with; the input that names it follows. */
    static final String ARRAY = "array-";

    /** The id of why there is no value at a blank; only what has any has it. */
    static final String BLANKS = "blanks";

    /** The id of what heads the sheet. */
    static final String HEADING = "heading";

    private Attached() {}

    /**
     * Reads what a record holds to be done again.
     *
     * @throws RecordRefused if it is no record
     */
    static Contents read(byte[] file) {
        Document document = parsed(file);
        return new Contents(
                text(document, "about"),
                text(document, "page-text"),
                text(document, "entries"),
                text(document, "unrounded"),
                arrays(document),
                found(document, BLANKS).orElse(Contents.NO_BLANKS),
                found(document, HEADING).orElse(Contents.NO_HEADING));
    }

    private static Document parsed(byte[] file) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new ByteArrayInputStream(file));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new RecordRefused("is no record that this program can read: " + e.getMessage());
        }
    }

    private static String text(Document document, String id) {
        return found(document, id).orElseThrow(() -> none(id));
    }

    private static Optional<String> found(Document document, String id) {
        return attached(document)
                .filter(element -> element.getAttribute("id").equals(id))
                .map(Element::getTextContent)
                .findFirst();
    }

    private static RecordRefused none(String id) {
        return new RecordRefused("has nothing attached as \"" + id + "\", so it is no record");
    }

    private static Map<String, String> arrays(Document document) {
        return attached(document)
                .filter(element -> element.getAttribute("id").startsWith(ARRAY))
                .collect(
                        Collectors.toMap(
                                element -> element.getAttribute("id").substring(ARRAY.length()),
                                Element::getTextContent,
                                (one, other) -> one,
                                LinkedHashMap::new));
    }

    private static Stream<Element> attached(Document document) {
        NodeList all = document.getElementsByTagName("pre");
        return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i));
    }
}
