namespace InspectLog.Checks.Sheets;

/// <summary>The parts a sheet file lists, found by the ids its checks name them by.</summary>
internal sealed class SheetParts
{
    private readonly IReadOnlyList<Part> _parts;

    private SheetParts(IReadOnlyList<Part> parts) => _parts = parts;

    /// <summary>Reads the list; a sheet without one has no parts.</summary>
    public static SheetParts Read(SheetNode? node)
    {
        if (node is not { } list)
        {
            return new([]);
        }

        var parts = list.List(Part);
        return SheetNode.FirstRepeated(parts.Select(part => part.Id)) is { } repeated
            ? throw list.Wrong($"two parts have the id '{repeated}'. Each needs its own.")
            : new(parts);
    }

    /// <summary>The part a member names.</summary>
    public Part One(SheetNode node) => _parts.FirstOrDefault(part => part.Id == node.Text())
        ?? throw node.Wrong($"'{node.Text()}' is not in the sheet's list of parts. {Known}");

    /// <summary>The parts a list names, each once.</summary>
    public IReadOnlyList<Part> Several(SheetNode node)
    {
        node.Texts();
        return node.List(One);
    }

    /// <summary>Refuses a part in the list that no check names: a misspelt id would be without effect.</summary>
    public void RefuseWhatNothingNames(SheetNode? node, IReadOnlyList<Check> checks)
    {
        var named = checks.SelectMany(check => check.Parts.Concat(check.Disturbs.Select(disturbance => disturbance.Part)));
        if (_parts.Except(named).FirstOrDefault() is { } idle)
        {
            throw node!.Value.Wrong($"no check names the part '{idle.Id}'. Take it out, or name it in a check.");
        }
    }

    /// <summary>Refuses a part of which each place has one in a check that is done once: nobody could say which.</summary>
    public static void RefusePlacesWhereThereAreNone(SheetNode node, Check check)
    {
        var named = check.Parts.Concat(check.Disturbs.Select(disturbance => disturbance.Part));
        if (!check.PerCylinder && named.FirstOrDefault(part => part is { PerPlace: true }) is { } placed)
        {
            throw node.Wrong(
                $"each place has a {placed.Name} of its own, but this check is done once and could not say which. "
                + "Give the check a 'placeNoun', or leave the part out.");
        }
    }

    private string Known => _parts.Count == 0
        ? "The sheet lists none: add 'parts'."
        : $"It lists: {string.Join(", ", _parts.Select(part => part.Id))}.";

    private static Part Part(SheetNode node)
    {
        node.Object("id", "name", "perPlace");
        return new Part(CheckReader.Id(node["id"]), node["name"].Text(), node["perPlace"].YesNo());
    }
}
