using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells a sentence that is read out of something: "page nine: air gap, point three", "option b, the cap is cracked".</summary>
internal static class References
{
    private static readonly HashSet<string> Places = new("page|table|section|chapter|option|question|answer|appendix|paragraph|exercise|slide|bulletin".Split('|'), StringComparer.Ordinal);

    /// <summary>Whether a sentence begins by telling where it stands.</summary>
    public static bool Opens(SpokenClause sentence)
    {
        var at = sentence.Stem(sentence.Start) is "the" or "on" ? sentence.Start + 1 : sentence.Start;
        return Places.Contains(sentence.Stem(at)) && (sentence.IsNumber(at + 1) || sentence.Text(at + 1).Length == 1 || sentence.Stem(at + 1) is "to" or "say");
    }
}
