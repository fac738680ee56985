using System.Text;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Sheets;

public partial class CheckSheetFileTests
{
    // Positions in the built-in sheet: check 4 is the coil circuit, measured; check 1 is lead condition, observed.

    /// <summary>Where the sheet is changed, to what (null takes it out), where the complaint belongs and what it says.
    /// Schema and loader both refuse these.</summary>
    public static TheoryData<string, string?, string, string> BrokenForm => new()
    {
        { "/colour", "'red'", "", "'colour' is not a member known here. Known are: id, version" },
        { "/checks/4/limit", "2", "checks[4]", "'limit' is not a member" },
        { "/checks/4/urgency", "'at once'", "checks[4].urgency", "soon" },
        { "/checks/4/measurand/limits/max", "2", "checks[4].measurand.limits", "'max' is not a member" },
        { "/checks/4/measurand/plausible/lower", "2", "checks[4].measurand.plausible", "'lower' is not a member" },
        { "/checks/4/measurand/unit", "'Ω'", "checks[4].measurand", "'unit' is not a member" },
        { "/checks/4/spoken/verbs", "[]", "checks[4].spoken", "'verbs' is not a member" },
        { "/checks/1/conditions/0/colour", "'red'", "checks[1].conditions[0]", "'colour' is not a member" },
        { "/checks/4/disturbs/0/why", "''", "checks[4].disturbs[0]", "'why' is not a member" },
        { "/title", null, "", "'title' is missing" },
        { "/checks/4/spoken", null, "checks[4]", "'spoken' is missing" },
        { "/checks/4/measurand/plausible", null, "checks[4].measurand", "'plausible' is missing" },
        { "/checks/4/measurand/plausible/to", null, "checks[4].measurand.plausible", "'to' is missing" },
        { "/checks/4/measurand/limitSource", null, "checks[4].measurand", "'limitSource' is missing" },
        { "/checks/4/disturbs/0/limit", "2", "checks[4].disturbs[0].limit", "must be an object" },
        { "/checks/4/disturbs/0/limit", "{'seconds':20,'because':'a','source':'b'}", "checks[4].disturbs[0].limit", "'seconds' is not a member" },
        { "/checks/4/disturbs/0/limit", "{'because':'a','source':'b'}", "checks[4].disturbs[0].limit", "'minutes' is missing" },
        { "/checks/4/disturbs/0/limit", "{'minutes':2,'source':'b'}", "checks[4].disturbs[0].limit", "'because' is missing" },
        { "/checks/4/disturbs/0/limit", "{'minutes':2,'because':'a'}", "checks[4].disturbs[0].limit", "'source' is missing" },
        { "/checks/4/disturbs/0/limit", "{'minutes':'2','because':'a','source':'b'}", "checks[4].disturbs[0].limit.minutes", "must be a number" },
        { "/checks/4/disturbs/0/limit", "{'minutes':0,'because':'a','source':'b'}", "checks[4].disturbs[0].limit.minutes", "more than 0 and at most 600 minutes" },
        { "/checks/4/disturbs/0/limit", "{'minutes':-1,'because':'a','source':'b'}", "checks[4].disturbs[0].limit.minutes", "more than 0 and at most 600 minutes" },
        { "/checks/4/disturbs/0/limit", "{'minutes':600.5,'because':'a','source':'b'}", "checks[4].disturbs[0].limit.minutes", "more than 0 and at most 600 minutes" },
        { "/checks/4/disturbs/0/limit", "{'minutes':2,'because':'','source':'b'}", "checks[4].disturbs[0].limit.because", "the text is empty" },
        { "/checks/4/disturbs/0/limit", "{'minutes':2,'because':'a','source':5}", "checks[4].disturbs[0].limit.source", "must be text" },
        { "/checks/4/disturbs/0/tie", null, "checks[4].disturbs[0]", "'tie' is missing" },
        { "/checks/1/conditions/0/meaning", null, "checks[1].conditions[0]", "'meaning' is missing" },
        { "/id", "'my sheet'", "id", "'my sheet' cannot be an id" },
        { "/checks/4/id", "'Coil'", "checks[4].id", "'Coil' cannot be an id" },
        { "/version", "0", "version", "a whole number from 1" },
        { "/version", "1.5", "version", "a whole number from 1" },
        { "/version", "'1'", "version", "must be a number" },
        { "/cylinders", "17", "cylinders", "a whole number from 1 to 16" },
        { "/cylinders", "[4, 17]", "cylinders[1]", "a whole number from 1 to 16" },
        { "/cylinders", "[]", "cylinders", "the list is empty" },
        { "/cylinders", "'six'", "cylinders", "must be a number" },
        { "/continues", "['My sheet']", "continues[0]", "'My sheet' cannot be an id" },
        { "/parts/0/size", "2", "parts[0]", "'size' is not a member" },
        { "/parts/0/perPlace", null, "parts[0]", "'perPlace' is missing" },
        { "/parts/0/id", "'Plug lead'", "parts[0].id", "'Plug lead' cannot be an id" },
        { "/checks/1/parts", "'plug-lead'", "checks[1].parts", "must be a list" },
        { "/checks/1/parts", "['plug-lead', 'plug-lead']", "checks[1].parts", "'plug-lead' stands in the list twice" },
        { "/checks", "[]", "checks", "the list is empty" },
        { "/checks", "{}", "checks", "must be a list" },
        { "/checks/4", "'coil'", "checks[4]", "must be an object" },
        { "/checks/4/title", "''", "checks[4].title", "the text is empty" },
        { "/checks/4/title", "'Coil '", "checks[4].title", "starts or ends with a space" },
        { "/checks/4/title", "null", "checks[4].title", "must be text" },
        { "/checks/4/measurand", "null", "checks[4].measurand", "must be an object" },
        { "/checks/1/placeNoun", "'Wheel 1'", "checks[1].placeNoun", "'Wheel 1' cannot be what a place is called" },
        { "/checks/1/placeNoun", "''", "checks[1].placeNoun", "the text is empty" },
        { "/checks/1/places", "0", "checks[1].places", "a whole number from 1 to 32" },
        { "/checks/1/places", "33", "checks[1].places", "a whole number from 1 to 32" },
        { "/checks/1/places", "'four'", "checks[1].places", "must be a number" },
        { "/checks/1/places", "[]", "checks[1].places", "the list is empty" },
        { "/checks/1/places", "['left']", "checks[1].places[0]", "must be an object" },
        { "/checks/1/places", "[{'name':'left'}]", "checks[1].places[0]", "'phrases' is missing" },
        { "/checks/1/places", "[{'name':'left','phrases':[],'side':1}]", "checks[1].places[0]", "'side' is not a member" },
        { "/checks/4/places", "4", "checks[4].places", "Say in 'placeNoun' what one of them is called" },
        { "/checks/4/measurand/kind", "'colour'", "checks[4].measurand.kind", "'colour' is not one of: resistance" },
        { "/checks/4/measurand/displayUnit", "'mm'", "checks[4].measurand.displayUnit", "'mm' is no unit of resistance" },
        { "/checks/4/measurand/displayUnit", "'ohms'", "checks[4].measurand.displayUnit", "'ohms' is no unit" },
        { "/checks/4/measurand/limits", "{}", "checks[4].measurand.limits", "Give a lower limit" },
        { "/checks/4/measurand/limits/upper", "'2'", "checks[4].measurand.limits.upper", "must be a number" },
        { "/checks/4/measurand/gauge", "'no'", "checks[4].measurand.gauge", "true or false" },
        { "/checks/1/actions/0", "'painted'", "checks[1].actions[0]", "'painted' is not one of: replaced" },
        { "/checks/1/actions/0", "'cleaned'", "checks[1].actions", "'cleaned' stands in the list twice" },
        { "/checks/1/conditions/0/meaning", "'perfect'", "checks[1].conditions[0].meaning", "'perfect' is not one of: good" },
        { "/checks/1/conditions/0/meaning", "'Good'", "checks[1].conditions[0].meaning", "'Good' is not one of" },
        { "/checks/1/conditions/0/id", "'as-new'", "checks[1].conditions[0].id", "'as-new' cannot be a condition" },
        { "/checks/1/conditions/0/phrases", "['a','a']", "checks[1].conditions[0].phrases", "'a' stands in the list twice" },
        { "/checks/4/method", "[]", "checks[4].method", "the list is empty" },
        { "/checks/4/safeState", "[]", "checks[4].safeState", "the list is empty" },
        { "/checks/4/cautions/0", "5", "checks[4].cautions[0]", "must be text" },
        { "/checks/4/spoken/subjects", "[]", "checks[4].spoken.subjects", "the list is empty" },
        { "/decisionRule", "'strict'", "decisionRule", "'strict' is no decision rule" },
        { "/decisionRule", "'risk 0'", "decisionRule", "'risk 0' is no decision rule" },
        { "/decisionRule", "'guard band -1'", "decisionRule", "is no decision rule" },
        { "/decisionRule", "5", "decisionRule", "must be text" },
        { "/coverage", "49.9", "coverage", "from 50 to 99.9" },
        { "/coverage", "100", "coverage", "from 50 to 99.9" },
        { "/coverage", "'99'", "coverage", "must be a number" },
        { "/checks/5/measurand/copperWinding", "'yes'", "checks[5].measurand.copperWinding", "true or false" },
        { "/checks/1/conditions", "[]", "checks[1]", "neither a measurand nor conditions" },
    };

    /// <summary>As above; only the loader can refuse these, since a schema does not compare numbers or ids.</summary>
    public static TheoryData<string, string?, string, string> BrokenSense => new()
    {
        { "/checks/4/id", "'coil-secondary-resistance'", "checks", "the id 'coil-secondary-resistance'" },
        { "/checks/1/conditions/0/id", "'chafed'", "checks[1].conditions", "'chafed' stands in the list twice" },
        { "/checks/6/disturbs/1", "{'id':'distributor-cap','text':'a','tie':'b'}", "checks[6].disturbs", "stands in the list twice" },
        { "/checks/4/disturbs/0/id", "'coil-lead'", "checks", "'coil-lead' is worded in two ways" },
        { "/checks/3/disturbs/0/limit/minutes", "3", "checks", "'ignition-on' is worded in two ways. Word it the same, its limit of time included" },
        { "/cylinders", "[6, 4]", "cylinders", "in rising order" },
        { "/parts/1/id", "'plug-lead'", "parts", "two parts have the id 'plug-lead'" },
        { "/parts/10", "{'id':'horn','name':'horn','perPlace':false}", "parts", "no check names the part 'horn'" },
        { "/checks/1/parts/0", "'lead'", "checks[1].parts[0]", "'lead' is not in the sheet's list of parts. It lists: plug-lead, spark-plug" },
        { "/checks/2/disturbs/0/part", "'lead'", "checks[2].disturbs[0].part", "'lead' is not in the sheet's list" },
        { "/checks/4/parts/0", "'plug-lead'", "checks[4]", "each place has a plug lead of its own" },
        { "/checks/4/disturbs/0/part", "'spark-plug'", "checks[4]", "each place has a spark plug of its own" },
        { "/checks/1/places", "4", "checks", "'lead' has other places in lead-condition than in another check" },
        { "/checks/0/places", "[{'name':'left','phrases':['near']},{'name':'right','phrases':['near']}]", "checks[0].places", "'near' stands for two places" },
        { "/checks/0/places", "[{'name':'left','phrases':['left']}]", "checks[0].places", "'left' stands for two places, or twice for one" },
        { "/checks/4/measurand/limits/upper", "0.5", "checks[4].measurand.limits", "upper limit must lie above" },
        { "/checks/4/measurand/limits/upper", "0.6", "checks[4].measurand.limits", "upper limit must lie above" },
        { "/checks/4/measurand/limits/upper", "11", "checks[4].measurand", "does not hold the limits" },
        { "/checks/4/measurand/limits/lower", "0", "checks[4].measurand", "does not hold the limits" },
        { "/checks/4/measurand/plausible/to", "0.1", "checks[4].measurand.plausible", "'to' must lie above 'from'" },
        { "/checks/4/measurand/nominal", "50", "checks[4].measurand", "outside of the plausible span" },
        { "/checks/4/measurand/nominal", "2.5", "checks[4].measurand", "outside of the limits" },
        { "/checks/4/measurand/nominal", "0.5", "checks[4].measurand", "outside of the limits" },
        { "/decisionRule", "'risk 0.7'", "decisionRule", "'risk 0.7' is no decision rule" },
        { "/checks/3/measurand/copperWinding", "true", "checks[3].measurand", "only a resistance" },
        { "/checks/4/measurand/nominal", "1e999", "checks[4].measurand.nominal", "too large" },
    };

    [Theory]
    [MemberData(nameof(BrokenForm))]
    [MemberData(nameof(BrokenSense))]
    public void Broken_file_is_refused_where_it_is_broken(string at, string? value, string path, string says)
    {
        var file = SheetFiles.Bytes(SheetFiles.Changed(at, value));

        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(file));

        Assert.Equal(path, refusal.Path);
        Assert.StartsWith(path, refusal.Message, StringComparison.Ordinal);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BrokenForm))]
    public void Schema_refuses_what_is_broken_in_form(string at, string? value, string path, string says) =>
        Assert.False(SheetFiles.SchemaAccepts(SheetFiles.Changed(at, value)), $"{path}: {says}");

    [Theory]
    [MemberData(nameof(BrokenSense))]
    public void Schema_cannot_see_what_is_broken_in_sense(string at, string? value, string path, string says) =>
        Assert.True(SheetFiles.SchemaAccepts(SheetFiles.Changed(at, value)), $"{path}: {says}");

    [Theory]
    [InlineData(null, "non-binary")]
    [InlineData("'simple'", "simple")]
    [InlineData("'guard band 0.83'", "guard band 0.83")]
    [InlineData("'risk 0.05'", "risk 0.05")]
    public void Rule_is_the_one_the_file_names_and_non_binary_where_it_names_none(string? value, string id) =>
        Assert.Equal(id, CheckSheetFile.Parse(SheetFiles.Bytes(SheetFiles.Changed("/decisionRule", value))).Rule.Id);

    [Theory]
    [InlineData("95.45", 0.95449973610364159)]
    [InlineData("95", 0.95)]
    [InlineData("99", 0.99)]
    [InlineData("99.9", 0.999)]
    public void Coverage_is_the_one_the_file_names(string value, double coverage) =>
        Assert.Equal(
            new Evaluation(EvaluationMethod.Distribution, coverage),
            CheckSheetFile.Parse(SheetFiles.Bytes(SheetFiles.Changed("/coverage", value))).Evaluation);

    [Fact]
    public void Sheet_that_names_no_coverage_has_the_usual_one() =>
        Assert.All(BuiltInSheets.All, sheet => Assert.Equal(Evaluation.Default, sheet.Evaluation));

    [Fact]
    public void Coil_secondary_is_a_copper_winding_and_the_circuit_with_its_ballast_is_none()
    {
        var sheet = BuiltInSheets.All[0];

        Assert.True(sheet.Find("coil-secondary-resistance")!.Measurand!.IsCopperWinding);
        Assert.False(sheet.Find("coil-circuit-resistance")!.Measurand!.IsCopperWinding);
    }
}
