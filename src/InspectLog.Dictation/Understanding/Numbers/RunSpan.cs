using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The tokens of a run of numbers, and the readings of the numbers in it.</summary>
internal sealed class RunSpan(NumberLookup numbers, int first, int next)
{
    public IReadOnlyList<Token> Tokens => numbers.Tokens;

    public int First => first;

    /// <summary>The token after the run.</summary>
    public int Next => next;

    /// <summary>The unit that starts at a token, within the run or after it.</summary>
    public UnitReading? Unit(int at) => numbers.Unit(at);

    /// <summary>The ways to read a number that starts at a token, whether or not it ends within the run.</summary>
    public IReadOnlyList<NumberReading> Numbers(int at) => numbers.Numbers(at);

    public bool IsRangeWord(int at) => at < next
        && (Tokens[at].IsMark('-') || Tokens[at].Stem is "to" or "through" or "thru" or "till" or "until");

    /// <summary>"Seventy-one point five", "25.7"; not "point five".</summary>
    public bool BeginsDecimal(int at) => Numbers(at).Any(whole => whole.Whole && IsFrontOfDecimal(at, whole));

    /// <summary>"Sixty-five": the five of it is no number of its own.</summary>
    public bool BeginsTens(int at) => at + 1 < next && NumberWords.Tens(Tokens[at].Stem) is not null && NumberWords.Unit(Tokens[at + 1].Stem) is not null;

    /// <summary>Whether a whole number is only what stands before the point.</summary>
    public bool IsFrontOfDecimal(int at, NumberReading whole) => Numbers(at).Any(reading => IsDecimal(reading, longerThan: whole.Next));

    private static bool IsDecimal(NumberReading reading, int longerThan) => !reading.Whole && reading.Next > longerThan && reading.Cost < 0.3;
}
