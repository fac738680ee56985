using System.Collections.Frozen;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>The words of numbers, to be looked up.</summary>
internal sealed class NumberVocabulary(NumberWordsFile file)
{
    private readonly FrozenDictionary<string, int> _units = file.Units.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _teens = file.Teens.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _tens = file.Tens.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _multiples = file.Multiples.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _ordinals = file.Ordinals.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, double> _fractions = file.Fractions.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _alikes = file.Alikes.ToFrozenDictionary(StringComparer.Ordinal);
    private readonly FrozenSet<string> _points = file.Points.ToFrozenSet(StringComparer.Ordinal);
    private readonly FrozenSet<string> _minus = file.Minus.ToFrozenSet(StringComparer.Ordinal);
    private readonly FrozenSet<string> _and = file.And.ToFrozenSet(StringComparer.Ordinal);
    private readonly FrozenSet<string> _one = file.One.ToFrozenSet(StringComparer.Ordinal);
    private readonly FrozenSet<string> _weak = file.WeakAlikes.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Zero to nine; null for another word.</summary>
    public int? Unit(string word) => _units.TryGetValue(word, out var number) ? number : null;

    /// <summary>Ten to nineteen.</summary>
    public int? Teen(string word) => _teens.TryGetValue(word, out var number) ? number : null;

    /// <summary>Twenty to ninety.</summary>
    public int? Tens(string word) => _tens.TryGetValue(word, out var number) ? number : null;

    /// <summary>A hundred, a thousand.</summary>
    public int? Multiple(string word) => _multiples.TryGetValue(word, out var number) ? number : null;

    /// <summary>First, second.</summary>
    public int? Ordinal(string word) => _ordinals.TryGetValue(word, out var number) ? number : null;

    /// <summary>A half, a quarter.</summary>
    public double? Fraction(string word) => _fractions.TryGetValue(word, out var number) ? number : null;

    /// <summary>The number a word sounds like.</summary>
    public int? Alike(string word) => _alikes.TryGetValue(word, out var number) ? number : null;

    /// <summary>Whether a word that sounds like a number is so common that it is one only in the plainest of places.</summary>
    public bool IsWeakAlike(string word) => _weak.Contains(word);

    public bool IsPoint(string word) => _points.Contains(word);

    public bool IsMinus(string word) => _minus.Contains(word);

    public bool IsAnd(string word) => _and.Contains(word);

    /// <summary>Whether it counts one before a multiple or a fraction: "a hundred".</summary>
    public bool IsOne(string word) => _one.Contains(word);

    /// <summary>Whether it is a word of a number by itself.</summary>
    public bool IsNumber(string word) => _units.ContainsKey(word) || _teens.ContainsKey(word) || _tens.ContainsKey(word)
        || _multiples.ContainsKey(word) || _ordinals.ContainsKey(word) || _fractions.ContainsKey(word);
}
