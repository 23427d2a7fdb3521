package halfwidth.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
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
                text(document, "unrounded"));
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
        NodeList all = document.getElementsByTagName("pre");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.getAttribute("id").equals(id)) {
                return element.getTextContent();
            }
        }
        throw new RecordRefused("has nothing attached as \"" + id + "\", so it is no record");
    }
}
