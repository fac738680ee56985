using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The numbers and units of one text, each read once.</summary>
internal sealed class NumberLookup
{
    private readonly NumberGrammar _numbers;
    private readonly UnitGrammar _units;
    private readonly IReadOnlyList<NumberReading>?[] _readings;
    private readonly (bool Read, UnitReading? Unit)[] _unitReadings;

    public NumberLookup(IReadOnlyList<Token> tokens)
    {
        Tokens = tokens;
        (_numbers, _units) = (new(tokens), new(tokens));
        _readings = new IReadOnlyList<NumberReading>?[tokens.Count];
        _unitReadings = new (bool, UnitReading?)[tokens.Count];
    }

    public IReadOnlyList<Token> Tokens { get; }

    /// <summary>The ways to read a number that starts at a token, likeliest first; none where no number starts.</summary>
    public IReadOnlyList<NumberReading> Numbers(int at) =>
        at >= Tokens.Count ? [] : _readings[at] ??= _numbers.At(at);

    /// <summary>The unit that starts at a token, or nothing.</summary>
    public UnitReading? Unit(int at)
    {
        if (at >= Tokens.Count)
        {
            return null;
        }

        if (!_unitReadings[at].Read)
        {
            _unitReadings[at] = (true, _units.At(at));
        }

        return _unitReadings[at].Unit;
    }
}
