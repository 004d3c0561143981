package org.pullproof.testing;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads XML strictly, with the parser of the JDK. */
public final class Xml {
    private Xml() {}

    /** The document; an {@link AssertionError} with the place if it is not well-formed. */
    public static Document parse(String xml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(xml)));
        } catch (SAXParseException wrong) {
            throw new AssertionError("line " + wrong.getLineNumber() + ": " + wrong.getMessage(), wrong);
        } catch (ParserConfigurationException | SAXException | IOException wrong) {
            throw new AssertionError(wrong);
        }
    }
}
