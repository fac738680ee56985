using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Marks findings whose words were not heard clearly, by the speech model's own probability of each word. The
/// lowest counts, not the mean: one wrong word makes a finding wrong.</summary>
internal static class UnclearWords
{
    /// <summary>Below this a number is to be looked at. The figures of the demo's recordings, all heard rightly, have 0.8
    /// and more; a figure that is wrong may have as much, so what is above it is not therefore right.</summary>
    public const double UnclearNumber = 0.6;

    /// <summary>Below this any word is: in noise a wrong part or condition is as likely as a wrong number.</summary>
    public const double Unclear = 0.3;

    /// <summary>The findings, those with an unclear word marked.</summary>
    public static IReadOnlyList<Finding> Mark(IReadOnlyList<Finding> findings, IReadOnlyList<HeardWord> words)
    {
        var unclear = words.Where(word => word.Probability < Unclear || word.Probability < UnclearNumber && IsNumber(word.Text)).ToList();
        return unclear.Count == 0 ? findings : [.. findings.Select(finding => Mark(finding, unclear))];
    }

    private static Finding Mark(Finding finding, List<HeardWord> unclear)
    {
        var within = unclear.Where(word => word.At < finding.End && word.At + word.Text.Length > finding.Start).ToList();
        return within.Count == 0 ? finding : finding with { Doubt = Doubts.Join(finding.Doubt, Reason(within)) };
    }

    private static string Reason(List<HeardWord> words) =>
        $"{string.Join(" and ", words.Select(word => $"'{word.Text.Trim(' ', ',', '.', '?', '!')}'"))} {(words.Count == 1 ? "was" : "were")} not heard clearly";

    private static bool IsNumber(string word) => Tokenizer.Cut(word).Any(token =>
        token.Kind == TokenKind.Digits || NumberWords.Unit(token.Stem) is not null || NumberWords.Teen(token.Stem) is not null
        || NumberWords.Tens(token.Stem) is not null || NumberWords.Ordinal(token.Stem) is not null
        || NumberWords.IsPoint(token.Stem) || NumberWords.IsZero(token.Stem)
        || token.Stem is "hundred" or "thousand" or "half" or "quarter" or "minus");
}
