using InspectLog.Checks;
using InspectLog.Doubts;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>Words doubts for people. The answers of hands-free listening use the same words. Pure.</summary>
public static class DoubtWords
{
    /// <summary>Why to look twice, as clauses joined by semicolons; null without doubt.</summary>
    /// <param name="doubts">The doubts, in the order to tell them.</param>
    /// <param name="sheet">The sheet that has the checks they name; one that it does not have is named by its id.</param>
    public static string? Of(IEnumerable<Doubt> doubts, CheckSheet sheet)
    {
        // Two values of one bracket may be doubted in the same words.
        var clauses = doubts.Select(doubt => Of(doubt, sheet).TrimEnd('.')).Distinct().ToList();
        return clauses.Count == 0 ? null : string.Join("; ", clauses);
    }

    /// <summary>Why a command is asked for again, as a sentence.</summary>
    public static string OfCommand(Doubt doubt) => doubt switch
    {
        CommandFaint => "It was heard faintly.",
        CommandHeardAs heard => $"It was heard as \u201C{heard.Heard}\u201D.",
        AsWorded then => then.Text,
        _ => "It may not be what was meant.",
    };

    private static string Of(Doubt doubt, CheckSheet sheet) => doubt switch
    {
        OfWords words => $"'{words.Words}' {SaidOf(words)}",
        OutsidePlausibleSpan span => Unlikely(span, sheet),
        Competes rival => $"this may be {Value(rival.Check, rival.Value, sheet)} or {Value(rival.Check, rival.Other, sheet)}",
        WrongUnit wrong => $"{wrong.Unit} does not fit {Title(wrong.Check, sheet)}, which is measured in {wrong.Right}",
        EitherCheck either => $"this may be {Title(either.Check, sheet)} or {Title(either.Other, sheet)}",
        CommandFaint or CommandHeardAs => OfCommand(doubt),
        AsWorded then => then.Text,
        _ => HowHeard(doubt) ?? OfValue(doubt) ?? OfPlace(doubt) ?? throw new ArgumentOutOfRangeException(nameof(doubt), doubt, "This kind of doubt has no words."),
    };

    private static string SaidOf(OfWords words) => words switch
    {
        UnknownWords => "was not understood",
        WasNotUsed => "was not used",
        HeardAs heard => $"was heard as '{heard.Heard}'",
        SaidOfPlans => "is said of what is to be done",
        InPlaceOfNumber => "stands where a number belongs",
        WithoutNumber => "stands without a number",
        DoneOrFound => "may be what was done, or how it was found",
        PerhapsPlace => "may be where it is",
        PerhapsNoFinding => "says that it may be no finding",
        _ => throw new ArgumentOutOfRangeException(nameof(words), words, "This kind of doubt has no words."),
    };

    private static string? HowHeard(Doubt doubt) => doubt switch
    {
        HeardUnclearly unclear => $"{Quoted(unclear.Words)} {(unclear.Words.Count == 1 ? "was" : "were")} not heard clearly",
        TakenFor { Rivals: [] } taken => $"{Taken(taken)}, which sounds alike",
        TakenFor taken => $"{Taken(taken)}, but {Quoted(taken.Rivals)} sounds as near",
        TakenForNumber taken => $"'{taken.Word}' was taken as the number {taken.Number}",
        TakenForUnit taken => $"'{taken.Word}' was taken as {taken.Unit}",
        TakenForParity taken => $"'{taken.Word}' was taken for {taken.Word} numbers",
        SoundsLikeNumber like => $"{like.Number} sounds like {like.Twin}",
        Hedged => "said with a doubt",
        PerhapsNegated => "this may say the opposite",
        PerhapsNothing => "this may be no finding",
        SeldomSaidSo => "this is seldom said in such words",
        _ => null,
    };

    private static string? OfValue(Doubt doubt) => doubt switch
    {
        EitherUnit either => $"this may mean {either.Unit} or {either.Other}",
        UnitUnsaid unsaid => $"no unit was said: {unsaid.Unit} or {unsaid.Other}",
        FiguresSaidApart => "the figures were said apart",
        FiguresWrittenApart => "the figures were written apart",
        FiguresWrittenTogether => "the figures were written as one number",
        PointOrSlash number => $"{number.Over}.{number.Under} may be {number.Over}/{number.Under}",
        OnlyBound => "only a bound was said, not the value",
        SaidAsRange => "said as a range",
        BareNumber => "only a number was said, among other words",
        GaugesReversed => "the gauge that goes is not smaller than the one that stops",
        CheckUnnamed => "no check was named",
        EitherCondition either => $"this may mean {either.Condition} or {either.Other}",
        FaultUnsaid => "what is wrong was not said",
        _ => null,
    };

    private static string? OfPlace(Doubt doubt) => doubt switch
    {
        PlaceUnnamed place => $"no {place.Noun} was named",
        TakenAsAll all => $"no numbers were said: taken as all {all.Places}",
        TakenInOrder => "no cylinders were named: taken in order",
        AnyWithoutNot => "'any' was said without a 'no' or 'not'",
        ValuesForPlaces count => $"{count.Values} values for {count.Places} places",
        EndUnknown => "the check sheet does not say which cylinders are at which end",
        OfLastLookedAt => "it may be of those last looked at",
        CountOrValue => "the count of cylinders and the value may be one number",
        CylinderOrValue => "the cylinder and the value may be one number",
        CountStartUnsaid => "where the count begins was not said",
        OtherPlace { Place: > 0 } other => $"this may be said of number {other.Place}",
        OtherPlace => "this may be said of all of it, not of one place",
        CountedUnnamed => "no part was named that is counted",
        _ => null,
    };

    private static string Unlikely(OutsidePlausibleSpan doubt, CheckSheet sheet)
    {
        var unlikely = $"that is an unlikely value for {Title(doubt.Check, sheet)}";
        return sheet.Find(doubt.Check)?.Measurand is { } measurand
            ? $"{unlikely}, where {Printed.Span(doubt.From, doubt.To, measurand.DisplayUnit)} is plausible"
            : unlikely;
    }

    private static string Value(string check, double value, CheckSheet sheet) =>
        sheet.Find(check)?.Measurand is { } measurand ? Printed.Value(value, measurand.DisplayUnit) : value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    private static string Title(string check, CheckSheet sheet) => sheet.Find(check)?.ShortTitle ?? check;

    private static string Taken(TakenFor doubt) => string.Join(" and ", doubt.Taken.Select(one => $"'{one.Heard}' was taken for '{one.For}'"));

    private static string Quoted(IReadOnlyList<string> words) => string.Join(" and ", words.Select(word => $"'{word}'"));
}
