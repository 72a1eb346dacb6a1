/**
 * What a plug-in needs to contribute a page of the job editor.
 *
 * <pre>{@code
 * public final class NameplatePage extends PartPage {
 *
 *     protected Words words() {
 *         return Words.of(NameplatePage.class);          // messages.properties beside this class
 *     }
 *
 *     protected void build(Form here) {
 *         here.section("plate.rating")                   // keys of messages.properties
 *                 .text("/maker", "plate.maker")         // "plate.maker.help" is what F1 shows
 *                 .number("/voltageV", "plate.voltage", FieldUnit.VOLT)
 *                 .integer("/phases", "plate.phases", 1, 3)
 *                 .choice("/marks", "plate.marks", Nameplate.TerminalMarks.class);   // "TerminalMarks.NEMA_T=..."
 *         here.grid("plate.others", "/otherRatings", columns -> columns
 *                 .number("/voltageV", "plate.voltage", FieldUnit.VOLT)
 *                 .text("/connection", "plate.connection"))
 *                 .newRow(() -> site().json().mapper().createObjectNode());
 *     }
 * }
 * }</pre>
 *
 * <p>In the plug-in's {@code plugin.xml}:
 *
 * <pre>{@code
 * <extension point="org.copperbook.desk.jobPages">
 *   <page id="org.copperbook.inspection.nameplate" name="%page.nameplate" part="nameplate" order="20" group="office"
 *         class="org.copperbook.inspection.NameplatePage" complete="/maker,/voltageV"/>
 * </extension>
 * }</pre>
 *
 * <p>A plug-in whose pages stand for several parts of one kind (windings, quotes) names a class of
 * {@link org.copperbook.desk.page.ManyParts} in the attribute {@code many}. A
 * {@link org.copperbook.desk.page.CautionsGate} keeps records of a step that can hurt from being begun before its
 * cautions have been acknowledged by name. The outline asks the page of
 * the sign-offs for a hold point with {@code reveal("#RELEASE")} (see
 * {@link org.copperbook.desk.editor.HoldPointPointer}).
 *
 * <p>Verdicts whose path is a field's pointer, or lies under a row's, stand beside it by themselves. A page that works
 * on a record as a whole uses {@code document().put(key(), record)}; every change is one undo step.
 */
package org.copperbook.desk.page;
