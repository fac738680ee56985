using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Finds words that stand where a number belongs and are none: "ten point free", "soot on plugs once and four",
/// "good on sri". What a clause with such a gap says is not to be trusted as it stands.</summary>
internal sealed class NumberGaps(SoundLookup sounds, Lexicon lexicon, IReadOnlyList<Token> tokens, TextReading reading)
{
    // Beside a number an unknown word is suspect if it is anywhere near the sound of one.
    private const double Suspicion = 1.6;

    /// <summary>The tokens of a clause that leave a gap in its numbers.</summary>
    public IReadOnlyList<int> In(int first, int next) =>
        [.. Enumerable.Range(first, next - first).Where(at => IsGap(at, first, next))];

    private bool IsGap(int at, int first, int next)
    {
        if (IsPoint(at))
        {
            return !Is(at, WordReading.Number) && (at > first && Is(at - 1, WordReading.Number) || at + 1 < next && Is(at + 1, WordReading.Number));
        }

        if (Is(at, WordReading.Predicate))
        {
            return at + 1 < next && IsPoint(at + 1) && NearNumber(at, 1);
        }

        if (!Is(at, WordReading.Unknown))
        {
            return at > first && IsPoint(at - 1) && tokens[at].Text is "to" or "too" or "for" or "won";
        }

        return at > first && IsPoint(at - 1) || at + 1 < next && IsPoint(at + 1)
            || IsBeside(at, first, next) && NearNumber(at, Suspicion);
    }

    private bool IsBeside(int at, int first, int next) =>
        at > first && (Is(at - 1, WordReading.Number) || IsPlaceSlot(at, first, next))
        || at + 1 < next && Is(at + 1, WordReading.Number)
        || at + 2 < next && tokens[at + 1].IsWord("and") && Is(at + 2, WordReading.Number)
        || InList(at);

    // "One, two, sri, four": alone between commas that numbers stand before and after.
    private bool InList(int at) =>
        at > 1 && tokens[at - 1].IsMark(',') && Is(at - 2, WordReading.Number)
        && at + 2 < tokens.Count && (tokens[at + 1].IsMark(',') || tokens[at + 1].IsWord("and")) && Is(at + 2, WordReading.Number);

    private bool NearNumber(int at, double strictness) => sounds.Near([tokens[at]], strictness, numbersOnly: true).Count > 0;

    // After "plug" or "on", or in a list of numbers, with nothing after it that it could describe.
    private bool IsPlaceSlot(int at, int first, int next)
    {
        var marked = lexicon.IsPlaceNoun(tokens[at - 1].Stem) || tokens[at - 1].Stem is "on"
            || tokens[at - 1].Stem is "and" or "or" or "to" or "through" && at - 1 > first && Is(at - 2, WordReading.Number);
        return marked && (at + 1 == next || reading.Words[at + 1] is WordReading.Tie or WordReading.Predicate);
    }

    private bool IsPoint(int at) => tokens[at].Kind == TokenKind.Word && NumberWords.IsPoint(tokens[at].Stem);

    private bool Is(int at, WordReading kind) => reading.Words[at] == kind;
}
