using System.Text.RegularExpressions;

namespace InspectLog.Checks.Sheets;

/// <summary>Reads the places of checks from a sheet file.</summary>
internal static partial class PlaceReader
{
    /// <summary>The places of one check; null for a check done once.</summary>
    public static CheckPlaces? Read(SheetNode check)
    {
        if (check.Optional("placeNoun") is not { } noun)
        {
            return check.Optional("places") is { } homeless
                ? throw homeless.Wrong("these places have no name. Say in 'placeNoun' what one of them is called.")
                : null;
        }

        var called = noun.Text();
        if (!NounForm().IsMatch(called))
        {
            throw noun.Wrong($"'{called}' cannot be what a place is called. Use lower-case words, for one of them: wheel.");
        }

        return check.Optional("places") is not { } places ? new(called, null, [])
            : places.IsList ? Named(called, places)
            : new(called, places.Whole(1, CheckPlaces.Most), []);
    }

    /// <summary>Refuses one noun for two sets of places, and one part of each place in checks whose places differ: a record
    /// of one could not be found from the other.</summary>
    public static void RefuseTwoSetsOfOneName(SheetNode node, IReadOnlyList<Check> checks)
    {
        var placed = checks.Where(check => check.Places is not null).ToList();
        if (placed.GroupBy(check => check.PlaceNoun).FirstOrDefault(Differ) is { } noun)
        {
            throw node.Wrong($"'{noun.Key}' has other places in {noun.First().Id} than in another check. Give both the same 'places', or use two nouns.");
        }

        var parts = placed.SelectMany(check => check.Parts.Concat(check.Disturbs.Select(disturbance => disturbance.Part!))
            .Where(part => part is { PerPlace: true }).Distinct().Select(part => (Part: part, Check: check)));
        if (parts.GroupBy(one => one.Part, one => one.Check).FirstOrDefault(Differ) is { } part)
        {
            throw node.Wrong($"there is one {part.Key.Name} for each place, but {part.First().Id} has other places than another check with that part.");
        }
    }

    private static bool Differ(IEnumerable<Check> checks) => checks.Any(check => !check.Places!.IsAlike(checks.First().Places!));

    private static CheckPlaces Named(string noun, SheetNode node)
    {
        var names = node.List(Name, atLeastOne: true);
        if (names.Count > CheckPlaces.Most)
        {
            throw node.Wrong($"a check has at most {CheckPlaces.Most} places.");
        }

        return SheetNode.FirstRepeated(names.SelectMany(one => one.Phrases.Prepend(one.Name))) is { } repeated
            ? throw node.Wrong($"'{repeated}' stands for two places, or twice for one.")
            : new(noun, names.Count, names);
    }

    private static NamedPlace Name(SheetNode node)
    {
        node.Object("name", "phrases");
        return new(node["name"].Text(), node["phrases"].Texts());
    }

    [GeneratedRegex(@"^[a-z]+( [a-z]+)*\z")]
    private static partial Regex NounForm();
}
