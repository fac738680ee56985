using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Understanding.Saying;

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
        return within.Count == 0 ? finding : finding with { Doubts = DoubtList.Join(finding.Doubts, Reason(within)) };
    }

    private static HeardUnclearly Reason(List<HeardWord> words) =>
        new([.. words.Select(word => word.Text.Trim(' ', ',', '.', '?', '!'))]);

    private static bool IsNumber(string word)
    {
        var language = SpokenLanguage.English;
        return language.Tokenizer.Cut(word).Any(token => token.Kind == TokenKind.Figure
            || language.Numbers.IsNumber(token.Text) || language.Numbers.IsPoint(token.Text) || language.Numbers.IsMinus(token.Text));
    }
}
