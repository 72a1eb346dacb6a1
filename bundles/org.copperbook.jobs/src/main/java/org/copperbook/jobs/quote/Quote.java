package org.copperbook.jobs.quote;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.Part;

/**
 * A quote with its alternatives. Money is in the quote's currency.
 *
 * @param schema          layout version
 * @param revision        revision as printed, from 1
 * @param date            date of the quote
 * @param validUntil      last day it holds
 * @param currency        ISO 4217 code
 * @param rounding        where amounts are rounded; line by line when not stated
 * @param language        language of the workbook, BCP 47 tag
 * @param alternatives    alternatives side by side
 * @param taxes           tax kinds that lines may name
 * @param terms           terms
 * @param exclusions      what is not included
 * @param sent            when the offer went out, or null; what went out is not changed but revised
 * @param approval        the customer's answer, or null
 * @param more            fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Quote(int schema, int revision, LocalDate date, LocalDate validUntil, String currency,
        RoundingRule rounding, String language, List<Alternative> alternatives, List<Tax> taxes, String terms,
        String exclusions, Sent sent, Approval approval, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** A quote that has not gone out. */
    public Quote(int schema, int revision, LocalDate date, LocalDate validUntil, String currency, RoundingRule rounding,
            String language, List<Alternative> alternatives, List<Tax> taxes, String terms, String exclusions,
            Approval approval, Map<String, JsonNode> more) {
        this(schema, revision, date, validUntil, currency, rounding, language, alternatives, taxes, terms, exclusions, null,
                approval, more);
    }

    public Quote {
        rounding = rounding == null ? RoundingRule.LINES : rounding;
        alternatives = alternatives == null ? List.of() : List.copyOf(alternatives);
        taxes = taxes == null ? List.of() : List.copyOf(taxes);
        more = more == null ? Map.of() : more;
    }

    /** Whether the customer has it: it was sent, or answered, which nobody does who has not got it. */
    public boolean wentOut() {
        return sent != null || isAnswered();
    }

    /** Whether the customer has said yes or no. */
    @JsonIgnore
    public boolean isAnswered() {
        return approval != null && approval.agreed() != null;
    }

    /** The same offer as one that has not gone out and has no answer, under a revision of its own. */
    public Quote asDraft(int number) {
        return new Quote(schema, number, date, validUntil, currency, rounding, language, alternatives, taxes, terms, exclusions,
                null, null, more);
    }

    /**
     * One way of doing the job.
     *
     * @param name            "full rewind", "part repair", "clean and dry", "replace"
     * @param lines           its lines
     * @param markUpPercent   mark-up added on cost, percent of cost; null for none
     * @param marginPercent   margin wanted, percent of the price, in place of a mark-up; null for none
     * @param discountPercent discount on the total, percent; null for none
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Alternative(String name, List<QuoteLine> lines, BigDecimal markUpPercent, BigDecimal marginPercent,
            BigDecimal discountPercent, String note, @KeepUnknown Map<String, JsonNode> more) {
        public Alternative {
            lines = lines == null ? List.of() : List.copyOf(lines);
            more = more == null ? Map.of() : more;
        }

        /** An alternative priced by its mark-up. */
        public Alternative(String name, List<QuoteLine> lines, BigDecimal markUpPercent, BigDecimal discountPercent,
                String note, Map<String, JsonNode> more) {
            this(name, lines, markUpPercent, null, discountPercent, note, more);
        }
    }

    /** A tax kind: short code, name and rate in percent. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Tax(String code, String name, BigDecimal ratePercent, @KeepUnknown Map<String, JsonNode> more) {
        public Tax {
            more = more == null ? Map.of() : more;
        }
    }

    /**
     * That an offer went to the customer.
     *
     * @param at          when
     * @param by          person key of who in the shop sent it and stands for its prices
     * @param fingerprint fingerprint of what went out
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Sent(Instant at, String by, String fingerprint, @KeepUnknown Map<String, JsonNode> more) {
        public Sent {
            more = more == null ? Map.of() : more;
        }
    }

    /** The customer's answer: agreed or declined, which alternative, by whom, how, when, up to what limit. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Approval(Boolean agreed, String alternative, String by, String how, Instant at, BigDecimal limit,
            String note, @KeepUnknown Map<String, JsonNode> more) {
        public Approval {
            more = more == null ? Map.of() : more;
        }
    }
}
