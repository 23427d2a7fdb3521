package halfwidth.spreadsheet;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Looks at a part of a workbook before its cells are read: no entities, which could name files or
 * grow without end, and no address or formula of a size that no spreadsheet writes, for which a
 * reader would keep room.
 */
final class CheckedXml {
    private static final Pattern CELL = Pattern.compile("[A-Z]{1,3}[1-9]\\d{0,6}");
    private static final int MOST_COLUMNS = 1_000;
    private static final int LONGEST_FORMULA = 8_192;

    private final XMLStreamReader reader;
    private int columns;

    private CheckedXml(XMLStreamReader reader) {
        this.reader = reader;
    }

    /** What is wrong with a part; empty if nothing is. */
    static Optional<String> of(byte[] part) {
        // The JDK's own, whatever else lies on the class path.
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(part));
            try {
                return new CheckedXml(reader).wrong();
            } finally {
                reader.close();
            }
        } catch (XMLStreamException | RuntimeException malformed) {
            return Optional.of("malformed XML");
        }
    }

    private Optional<String> wrong() throws XMLStreamException {
        while (reader.hasNext()) {
            int event = reader.next();
            if (event == XMLStreamConstants.DTD
                    || event == XMLStreamConstants.ENTITY_REFERENCE
                    || event == XMLStreamConstants.ENTITY_DECLARATION) {
                return Optional.of("XML entities or a document type");
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                Optional<String> wrong = element(reader.getLocalName());
                if (wrong.isPresent()) {
                    return wrong;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> element(String name) throws XMLStreamException {
        columns = name.equals("row") ? 0 : columns;
        if (name.equals("c")) {
            columns++;
            String address = reader.getAttributeValue(null, "r");
            boolean known = address == null || CELL.matcher(address).matches();
            if (!known || columns > MOST_COLUMNS) {
                return Optional.of(
                        known
                                ? "more than " + MOST_COLUMNS + " cells in a row"
                                : "a cell at " + brief(address));
            }
        }
        if (name.equals("f") && reader.getElementText().length() > LONGEST_FORMULA) {
            return Optional.of("a formula of more than " + LONGEST_FORMULA + " letters");
        }
        return Optional.empty();
    }

    private static String brief(String address) {
        return address.length() > 20 ? address.substring(0, 20) + "…" : address;
    }
}
