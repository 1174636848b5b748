package fitworthy.counter.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What a page makes of what is sent is worked out here by itself, from trees of Java's own XML parser. */
class MarkupTest {

    private static final int TRIES = 2000;

    private static String since(String before, String now) {
        return Markup.of(now).since(Markup.of(before));
    }

    private static String from(String origins) {
        return "<template data-from=\"" + origins + "\"></template>";
    }

    private static String item(String name, String words) {
        return "<li id=\"item-of-the-list-" + name + "\">" + words + "</li>";
    }

    @Test
    void ofAListOnlyWhatChangedIsSent() {
        String a = item("a", "a");
        String b = item("b", "b");
        String c = item("c", "c");
        String list = "\n" + a + "\n" + b + "\n" + c + "\n";
        assertEquals(from("7 0-7"), since(list, list));
        assertEquals(
                from("7 0-3 3 4-7") + item("b", "more"),
                since(list, "\n" + a + "\n" + item("b", "more") + "\n" + c + "\n"));
        assertEquals(
                from("7 0-5 + _ 5-7") + item("d", "d"),
                since(list, "\n" + a + "\n" + b + "\n" + item("d", "d") + "\n" + c + "\n"));
        assertEquals(from("7 0-3 5-7"), since(list, "\n" + a + "\n" + c + "\n"));
        assertEquals(from("7 0-1 + _ 1-5") + c, since(list, "\n" + c + "\n" + a + "\n" + b + "\n"));
    }

    /** Words that are sent without what stands between them would be joined. */
    @Test
    void wordsBesideAnElementAreSentWithIt() {
        String before = "<p class=\"a-class-with-a-long-name\">5 <b>of</b> 6</p>";
        String now = before.replace("5", "4");
        assertEquals(now, since(before, now));
    }

    @Test
    void aSignInAValueEndsNoTag() {
        String before = "<p title=\"a > b\"><input value=\"x/\"><br>c</p>";
        String now = before.replace("c", "d");
        assertEquals(now, since(before, now));
        assertEquals(from("1 0-1"), since(now, now));
    }

    /** Lists in lists of which anything may change, come, go and move. */
    @Test
    void whatIsPutTogetherIsWhatWasMeant() throws Exception {
        Random random = new Random(30);
        int less = 0;
        for (int i = 0; i < TRIES; i++) {
            List<Integer> names = new ArrayList<>(IntStream.range(0, 8).boxed().toList());
            String before = made(names, random, 2);
            if (random.nextBoolean()) {
                Collections.swap(names, random.nextInt(8), random.nextInt(8));
            }
            names.remove(random.nextInt(8));
            names.add(random.nextInt(8), 8);
            String now = made(names, random, 2);
            String sent = since(before, now);
            less += sent.length() < now.length() ? 1 : 0;
            assertEquals(now, text(put(tree(before), tree(sent))), before + " and " + sent);
        }
        assertTrue(less > TRIES / 2, less + " were sent in part");
    }

    private static String made(List<Integer> names, Random random, int deep) {
        StringBuilder list = new StringBuilder("<ul>");
        for (int name : names) {
            String words = deep > 1 && name % 3 == 0
                    ? made(names.subList(0, name % names.size()), random, deep - 1)
                    : "words that are long enough to be left out" + (random.nextInt(6) == 0 ? random.nextInt(3) : "");
            list.append(name % 2 == 0 ? " <li id=\"i" + name + "\">" : " <li>")
                    .append(words)
                    .append("</li>");
        }
        return list + "</ul>";
    }

    private static Element tree(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader("<x>" + html + "</x>")))
                .getDocumentElement();
    }

    private static List<Node> nodes(Node of) {
        NodeList all = of.getChildNodes();
        return IntStream.range(0, all.getLength()).mapToObj(all::item).toList();
    }

    /** What an element holds now: of what was sent, and of what it held. */
    private static Element put(Element old, Element sent) {
        List<Node> olds = nodes(old);
        List<Node> come = nodes(sent);
        if (come.isEmpty()
                || !(come.get(0) instanceof Element said)
                || !said.getTagName().equals("template")) {
            return sent;
        }
        Iterator<Node> next = come.subList(1, come.size()).iterator();
        String[] words = said.getAttribute("data-from").split(" ");
        assertEquals(olds.size(), Integer.parseInt(words[0]));
        Element now = (Element) sent.cloneNode(false);
        for (String word : List.of(words).subList(1, words.length)) {
            String[] range = word.split("-");
            if (range.length == 2) {
                olds.subList(Integer.parseInt(range[0]), Integer.parseInt(range[1]))
                        .forEach(kept -> add(now, kept));
            } else if (word.equals("_")) {
                now.appendChild(now.getOwnerDocument().createTextNode(" "));
            } else if (word.equals("+")) {
                add(now, next.next());
            } else {
                add(now, put((Element) olds.get(Integer.parseInt(word)), (Element) next.next()));
            }
        }
        assertTrue(!next.hasNext());
        return now;
    }

    private static void add(Element to, Node node) {
        to.appendChild(to.getOwnerDocument().importNode(node, true));
    }

    private static String text(Node node) {
        if (!(node instanceof Element element)) {
            return node.getNodeValue();
        }
        StringBuilder within = new StringBuilder();
        nodes(element).forEach(each -> within.append(text(each)));
        String id = element.getAttribute("id");
        return element.getTagName().equals("x")
                ? within.toString()
                : "<" + element.getTagName() + (id.isEmpty() ? "" : " id=\"" + id + "\"") + ">" + within + "</"
                        + element.getTagName() + ">";
    }
}
