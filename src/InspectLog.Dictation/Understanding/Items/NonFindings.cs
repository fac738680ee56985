using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Finds the stretches of a sentence that speak of no finding: questions, orders, plans, wishes, limits,
/// other cars, earlier times, hearsay, things not done.</summary>
internal static class NonFindings
{
    /// <summary>For each token of a sentence, whether it is part of no finding.</summary>
    /// <param name="phrases">The phrases of the text.</param>
    /// <param name="numbers">The numbers of the text.</param>
    /// <param name="first">First token of the sentence.</param>
    /// <param name="next">Token after the sentence, its closing mark included.</param>
    /// <param name="nounAt">Whether a part, a number or a pronoun starts at a token.</param>
    /// <param name="numberAt">Whether a number starts at a token.</param>
    public static bool[] Blocked(PhraseLookup phrases, NumberLookup numbers, int first, int next, Func<int, bool> nounAt, Func<int, bool> numberAt)
    {
        var sentence = new Sentence(phrases, first, next, nounAt, numberAt);
        var blocked = new bool[next - first];
        if (Questions.Asks(sentence))
        {
            Array.Fill(blocked, true);
            return blocked;
        }

        foreach (var (from, to) in Stretches(sentence).Concat(TalkShapes.In(phrases, numbers, first, next)))
        {
            Array.Fill(blocked, true, from - first, Math.Max(0, to - from));
        }

        return blocked;
    }

    private static IEnumerable<(int From, int To)> Stretches(Sentence sentence)
    {
        if (Orders.Given(sentence) is { } order)
        {
            yield return order;
        }

        if (AnyOne.Holds(sentence))
        {
            yield return (sentence.Opening, sentence.Next);
        }

        foreach (var stretch in new Cues(sentence).Stretches())
        {
            yield return stretch;
        }
    }
}
