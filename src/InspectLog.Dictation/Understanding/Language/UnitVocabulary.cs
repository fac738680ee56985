using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>A unit as it is spoken of.</summary>
/// <param name="Unit">The unit; null for what is counted, paid or timed and never measured by a check.</param>
/// <param name="Times">How many of the unit the words stand for: 0.01 for hundredths of a millimetre.</param>
internal sealed record SpokenUnit(Unit? Unit, double Times)
{
    /// <summary>The value in the base unit of the kind.</summary>
    public double ToBase(double number) => Unit!.ToBase(number * Times);
}

/// <summary>The spoken names of units. The units themselves are those of the measuring room.</summary>
internal sealed class UnitVocabulary
{
    private readonly PhraseTrie<SpokenUnit> _names = new();
    private readonly PhraseTrie<SpokenUnit> _glued = new();
    private readonly PhraseTrie<bool> _zeros = new();

    public UnitVocabulary(LanguageFile file, Tokenizer tokenizer)
    {
        foreach (var names in file.Units)
        {
            var unit = Units.Find(names.Unit) ?? throw new InvalidOperationException($"The language file names a unit {names.Unit}, which there is not.");
            foreach (var name in names.Names)
            {
                _names.Add(tokenizer.StemsOf(name), new(unit, names.Times ?? 1));
            }

            foreach (var name in names.Glued ?? [])
            {
                _glued.Add(tokenizer.StemsOf(name), new(unit, names.Times ?? 1));
            }
        }

        foreach (var name in file.OtherUnits)
        {
            _names.Add(tokenizer.StemsOf(name), new(null, 1));
        }

        foreach (var name in file.ZeroAngles)
        {
            _zeros.Add(tokenizer.StemsOf(name), true);
        }
    }

    /// <summary>The longest name of a unit that starts at a token, with all it can mean; null where none does.</summary>
    /// <remarks>Some are units only where they are written against the figures, or as a capital: "0.3in", "5 A".</remarks>
    public (int Length, IReadOnlyList<SpokenUnit> Meanings)? At(IReadOnlyList<Token> tokens, int at) =>
        _names.Longest(tokens, at) ?? (at > 0 && at < tokens.Count && (tokens[at].Glued || tokens[at].Capital) && tokens[at - 1].Kind == TokenKind.Figure ? _glued.Longest(tokens, at) : null);

    /// <summary>How many tokens say "top dead centre" at a place, which is an angle of zero; 0 where none do.</summary>
    public int ZeroAngle(IReadOnlyList<Token> tokens, int at) => _zeros.Longest(tokens, at)?.Length ?? 0;
}
