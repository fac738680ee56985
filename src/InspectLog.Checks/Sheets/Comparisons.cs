using InspectLog.Measuring;

namespace InspectLog.Checks.Sheets;

/// <summary>Reads what readings of a check are compared with, once all checks of the sheet are known.</summary>
internal static class Comparisons
{
    /// <summary>The checks with their comparisons.</summary>
    /// <param name="node">The sheet's list of checks.</param>
    /// <param name="checks">The checks read from it, in its order.</param>
    public static IReadOnlyList<Check> Read(SheetNode node, IReadOnlyList<Check> checks)
    {
        var nodes = node.List(one => one);
        return [.. checks.Select((check, at) => WithComparison(nodes[at], check, checks))];
    }

    private static Check WithComparison(SheetNode node, Check check, IReadOnlyList<Check> checks) =>
        check.Measurand is { } measurand && node["measurand"].Optional("decidedBy") is { } compared
            ? check with { Measurand = measurand with { DecidedBy = Read(compared, check, checks) } }
            : check;

    private static Comparison Read(SheetNode node, Check check, IReadOnlyList<Check> checks)
    {
        node.Object("form", "check", "limits", "limitSource");
        var form = Enum.Parse<ComparisonForm>(node["form"].Word("difference", "proportion"), ignoreCase: true);
        var other = Other(node["check"], check, checks);
        RefuseWhatCannotBeCompared(node, form, check, other);
        return new(form, other.Id, MeasurandReader.ReadLimits(node["limits"]), node["limitSource"].Text())
        {
            Name = other.ShortTitle,
            OtherUnit = other.Measurand!.DisplayUnit,
            AtSamePlace = other.PerCylinder,
        };
    }

    private static Check Other(SheetNode node, Check check, IReadOnlyList<Check> checks)
    {
        var id = CheckReader.Id(node);
        var other = checks.FirstOrDefault(one => one.Id == id)
            ?? throw node.Wrong($"'{id}' is no check of this sheet. Name one that is, or add it.");
        return other == check ? throw node.Wrong("a check cannot be compared with itself.")
            : other.Measurand is null ? throw node.Wrong($"'{id}' is looked at, not measured. Name a check that is measured.")
            : other;
    }

    private static void RefuseWhatCannotBeCompared(SheetNode node, ComparisonForm form, Check check, Check other)
    {
        var (kind, otherKind) = (check.Measurand!.Kind, other.Measurand!.Kind);
        if (form == ComparisonForm.Difference && kind != otherKind)
        {
            throw node.Wrong(
                $"a difference needs two readings of one kind, and {other.Id} is a {Kinds.Noun(otherKind)}, not a {Kinds.Noun(kind)}.");
        }

        // A proportion of temperatures would depend on where their scale begins, and their differences have another zero.
        if (kind == QuantityKind.Temperature || otherKind == QuantityKind.Temperature)
        {
            throw node.Wrong("temperatures are not compared. Take 'decidedBy' out.");
        }

        if (other.PerCylinder && other.PlaceNoun != check.PlaceNoun)
        {
            throw node.Wrong(
                $"{other.Id} is read at each {other.PlaceNoun}, and nothing says which of them counts here. "
                + "Give both checks the same 'placeNoun'.");
        }
    }
}
