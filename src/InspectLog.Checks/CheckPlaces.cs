namespace InspectLog.Checks;

/// <summary>A place that goes by a name rather than by a number.</summary>
/// <param name="Name">What tells it from the others: "front left".</param>
/// <param name="Phrases">Other words people say for it.</param>
public sealed record NamedPlace(string Name, IReadOnlyList<string> Phrases);

/// <summary>The places one check is done at: the cylinders, or places of its own such as the cells of a battery or the four
/// corners of a car. Records count them from 1, named ones in the order of their list.</summary>
/// <param name="Noun">What each is called: "cylinder", "lead", "cell".</param>
/// <param name="Own">How many there are; null where there are as many as the engine has cylinders.</param>
/// <param name="Names">Their names; empty where they go by number.</param>
public sealed record CheckPlaces(string Noun, int? Own, IReadOnlyList<NamedPlace> Names)
{
    /// <summary>The most places of its own that a check may have.</summary>
    public const int Most = 32;

    /// <summary>The noun of several: "cylinders", "brushes", "batteries".</summary>
    public string Nouns =>
        Noun.EndsWith('y') && Noun is [.., not ('a' or 'e' or 'i' or 'o' or 'u'), _] ? $"{Noun[..^1]}ies"
        : Noun.EndsWith('s') || Noun.EndsWith('x') || Noun.EndsWith("ch", StringComparison.Ordinal) || Noun.EndsWith("sh", StringComparison.Ordinal) ? $"{Noun}es"
        : $"{Noun}s";

    /// <summary>How many there are at an engine with so many cylinders.</summary>
    public int CountFor(int cylinders) => Own ?? cylinders;

    /// <summary>What tells a place from the others: "4", "front left". A number there is no name for stands for itself, since
    /// a record holds what it holds.</summary>
    public string LabelOf(int number) => number >= 1 && number <= Names.Count
        ? Names[number - 1].Name
        : number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A place as people call it within a sentence: "lead 4", "front left wheel".</summary>
    public string NameOf(int number) => number >= 1 && number <= Names.Count ? $"{LabelOf(number)} {Noun}" : $"{Noun} {LabelOf(number)}";

    /// <summary>Several of them within a sentence: "leads 2 and 4", "front left and front right wheels".</summary>
    public string NameOf(IReadOnlyList<int> numbers)
    {
        if (numbers is [var only])
        {
            return NameOf(only);
        }

        var labels = numbers.Select(LabelOf).ToList();
        var listed = labels.Count == 0 ? "" : $"{string.Join(", ", labels[..^1])} and {labels[^1]}";
        return Names.Count > 0 ? $"{listed} {Nouns}" : $"{Nouns} {listed}";
    }

    /// <summary>Which there are to choose from: "cylinder from 1 to 6", "wheel: front left, front right or spare".</summary>
    public string Choice(int cylinders) => Names.Count == 0 ? $"{Noun} from 1 to {CountFor(cylinders)}"
        : Names.Count == 1 ? $"{Noun}: {Names[0].Name}"
        : $"{Noun}: {string.Join(", ", Names.SkipLast(1).Select(one => one.Name))} or {Names[^1].Name}";

    /// <summary>Whether it has the same places, whatever they are called.</summary>
    internal bool IsAlike(CheckPlaces other) =>
        Own == other.Own && Names.Select(one => one.Name).SequenceEqual(other.Names.Select(one => one.Name));
}
