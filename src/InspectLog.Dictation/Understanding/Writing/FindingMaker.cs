using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>Makes findings with the words they came from.</summary>
internal sealed class FindingMaker(IReadOnlyList<Token> tokens, string text)
{
    public Finding Reading(Frame frame, ValueSaid said, Check check, int? place, string? doubt) =>
        Make(frame, said, FindingKind.Reading, check, place, doubt) with
        {
            Value = Round(said.Value.Value),
            Unit = Units.BaseOf(check.Measurand!.Kind).Symbol,
        };

    public Finding Bracket(Frame frame, ValueSaid first, ValueSaid second, Check check, int? place, string? doubt)
    {
        var (goes, stops) = first.Goes == true ? (first, second) : (second, first);
        var wrong = goes.Value.Value < stops.Value.Value ? null : "the gauge that goes is not smaller than the one that stops";
        var finding = Make(frame, second, FindingKind.Reading, check, place, Doubts.Join(first.Doubt, doubt, wrong));
        var start = Math.Min(finding.Start, tokens[first.First].Start);
        return finding with
        {
            Bracket = new(Round(goes.Value.Value), Round(stops.Value.Value)),
            Unit = Units.BaseOf(check.Measurand!.Kind).Symbol,
            Start = start,
            Words = text[start..finding.End],
        };
    }

    public Finding Observation(Frame frame, Predicate said, Check check, int? place, string condition, bool negated, string? doubt) =>
        Make(frame, said, FindingKind.Observation, check, place, doubt) with { Condition = condition, Negated = negated };

    public Finding Action(Frame frame, Predicate said, Check check, int? place, string action, string? doubt) =>
        Make(frame, said, FindingKind.Action, check, place, doubt) with { Action = action };

    /// <summary>A finding said again of another place: "same on four".</summary>
    public Finding Again(Finding finding, Frame frame, int place)
    {
        var (start, end) = Span(frame, null);
        return finding with { Place = new(place), Words = text[start..end], Start = start, End = end };
    }

    private Finding Make(Frame frame, Predicate said, FindingKind kind, Check check, int? place, string? doubt)
    {
        var (start, end) = Span(frame, said);
        return new(kind, check.Id, place is { } cylinder ? new Place(cylinder) : null, null, null, null, null, false, null,
            text[start..end], start, end, Doubts.Join(frame.Doubt, said.Doubt, doubt));
    }

    // From the subject to what is said of it; the subject counts to the end only where it comes last.
    private (int Start, int End) Span(Frame frame, Predicate? said)
    {
        var subject = frame.SubjectSpan ?? (said!.First, said.Next);
        var first = Math.Min(said?.First ?? subject.First, subject.First);
        var next = said is null ? subject.Next
            : frame is { SubjectAfter: true, SubjectBefore: false } ? Math.Max(said.Next, subject.Next)
            : said.Next;
        first = Math.Min(first, next - 1);
        return (tokens[first].Start, tokens[next - 1].End);
    }

    // Keeps the value free of the noise of binary fractions.
    private static double Round(decimal value) => (double)decimal.Round(value, 9);
}
