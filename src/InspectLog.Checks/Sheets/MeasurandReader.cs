using System.Collections.Frozen;
using InspectLog.Measuring;

namespace InspectLog.Checks.Sheets;

/// <summary>Reads what a check measures from a sheet file.</summary>
internal static class MeasurandReader
{
    private static readonly FrozenDictionary<string, QuantityKind> KindOf =
        Enum.GetValues<QuantityKind>().ToFrozenDictionary(Kinds.Noun, StringComparer.Ordinal);

    public static Measurand Read(SheetNode node)
    {
        node.Object("kind", "displayUnit", "limits", "nominal", "limitSource", "plausible", "gauge", "copperWinding", "decidedBy");
        var kind = KindOf[node["kind"].Word([.. KindOf.Keys])];
        var measurand = new Measurand(
            kind,
            DisplayUnit(node["displayUnit"], kind),
            node.Optional("limits") is { } limits ? ReadLimits(limits) : null,
            node.Optional("nominal")?.Number(),
            node["limitSource"].Text(),
            Plausible(node["plausible"]),
            node["gauge"].YesNo())
        {
            IsCopperWinding = node.Optional("copperWinding")?.YesNo() ?? false,
        };
        RefuseWhatDoesNotFit(node, measurand);
        return measurand;
    }

    private static Unit DisplayUnit(SheetNode node, QuantityKind kind)
    {
        var symbol = node.Text();
        return Units.Find(symbol) is { } unit && unit.Kind == kind
            ? unit
            : throw node.Wrong(
                $"'{symbol}' is no unit of {Kinds.Noun(kind)}. Use {Kinds.UnitList(kind)}.");
    }

    internal static Limits ReadLimits(SheetNode node)
    {
        node.Object("lower", "upper");
        try
        {
            return Limits.Of(node.Optional("lower")?.Number(), node.Optional("upper")?.Number());
        }
        catch (ArgumentException e)
        {
            throw node.Wrong(e.Message);
        }
    }

    private static PlausibleSpan Plausible(SheetNode node)
    {
        node.Object("from", "to");
        var span = new PlausibleSpan(node["from"].Number(), node["to"].Number());
        return span.From < span.To ? span : throw node.Wrong("'to' must lie above 'from'.");
    }

    private static void RefuseWhatDoesNotFit(SheetNode node, Measurand measurand)
    {
        if (measurand is { IsCopperWinding: true, Kind: not QuantityKind.Resistance })
        {
            throw node.Wrong("only a resistance can be that of a copper winding. Take 'copperWinding' out.");
        }

        var (limits, nominal, plausible) = (measurand.Limits, measurand.Nominal, measurand.Plausible);
        if (limits?.Lower is { } lower && !plausible.Holds(lower)
            || limits?.Upper is { } upper && !plausible.Holds(upper))
        {
            throw node.Wrong("the plausible span does not hold the limits. Widen the span or correct the limits.");
        }

        if (nominal is { } value && !plausible.Holds(value))
        {
            throw node.Wrong("the nominal value lies outside of the plausible span.");
        }

        if (nominal < limits?.Lower || nominal > limits?.Upper)
        {
            throw node.Wrong("the nominal value lies outside of the limits.");
        }
    }
}
