using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Doubting;

/// <summary>Collects, for each finding of a text, the words that put it in doubt and why. A word is spoken of once, by the
/// first reason given; neighbours with the same reason are spoken of together.</summary>
internal sealed class WordDoubts(IReadOnlyList<Token> tokens, IReadOnlyList<Finding> findings)
{
    private readonly SortedDictionary<int, string>[] _doubts = [.. findings.Select(_ => new SortedDictionary<int, string>())];

    /// <summary>Puts findings in doubt.</summary>
    /// <param name="marked">Which of them.</param>
    /// <param name="at">The token that does.</param>
    /// <param name="why">What is said of the word: "was not understood".</param>
    public void Add(IEnumerable<int> marked, int at, string why)
    {
        foreach (var finding in marked)
        {
            _doubts[finding].TryAdd(at, why);
        }
    }

    /// <summary>The findings with their reasons.</summary>
    public IReadOnlyList<Finding> Marked() =>
        [.. findings.Select((finding, i) => _doubts[i].Count == 0 ? finding : finding with { Doubt = Doubts.Join([finding.Doubt, .. Reasons(_doubts[i])]) })];

    private IEnumerable<string> Reasons(SortedDictionary<int, string> doubts)
    {
        var words = "";
        foreach (var (at, why) in doubts)
        {
            words += words.Length > 0 ? $" {tokens[at].Text}" : tokens[at].Text;
            if (doubts.GetValueOrDefault(at + 1) != why)
            {
                yield return $"'{words}' {why}";
                words = "";
            }
        }
    }
}
