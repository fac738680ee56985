using InspectLog.Checks.Derived;
using InspectLog.Checks.Routing;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.Inspecting.Workings;

/// <summary>Workings of the plug leads: their resistance for their length, and whether they are on the right towers.</summary>
public static class LeadWorkings
{
    /// <summary>The leads against each other and against their lengths.</summary>
    public static readonly WorkingKind Leads = new(
        "leads",
        "Leads for their length",
        "Each lead's resistance per length against its kind and against the other leads.",
        scene =>
        [
            new("class", "Kind of lead", "", LeadClass.Known[0].Name, [.. LeadClass.Known.Select(kind => kind.Name)],
                "The maker's manual says which kind the engine has."),
            .. Enumerable.Range(1, scene.Sheet.Cylinders).SelectMany(cylinder => new WorkingField[]
            {
                new(Field("resistance", cylinder), $"Lead {cylinder}, resistance", "kΩ",
                    FromInspection.Value(scene, "lead-resistance", Units.Kilohm, cylinder), [])
                {
                    Read = FromInspection.Read(scene, "lead-resistance", Units.Kilohm, cylinder),
                },
                new(Field("length", cylinder), $"Lead {cylinder}, length", "m", Metres(scene, cylinder), []),
            }),
        ],
        (inputs, scene) =>
        {
            var kind = LeadClass.Known.First(one => one.Name == inputs.Choice("class"));
            var leads = Enumerable.Range(1, scene.Sheet.Cylinders)
                .Where(cylinder => inputs.Optional(Field("resistance", cylinder)) is not null)
                .Select(cylinder => new Lead(
                    cylinder,
                    Units.Kilohm.ToBase(inputs.Number(Field("resistance", cylinder))),
                    inputs.Optional(Field("length", cylinder))))
                .ToList();
            return leads.Count == 0
                ? throw new ArgumentException("Measure the resistance of at least one lead.")
                : [.. LeadSet.Compare(leads, kind).Select(lead => new WorkedPart(
                    $"Lead {lead.Lead.Cylinder}", lead.Steps, [Words(lead), $"Figures of the kind: {kind.Source}."]))];
        }) { Checks = ["lead-resistance", "lead-length"] };

    /// <summary>The leads against the firing order.</summary>
    public static readonly WorkingKind Routing = new(
        "routing",
        "Lead routing",
        "Which leads are on the wrong towers, and the fewest swaps that put them right.",
        scene =>
        [
            new("order", "Firing order", "", string.Join('-', scene.Vehicle.Engine?.FiringOrder ?? []), [],
                "From the manual or the engine, such as 1-5-3-6-2-4."),
            new("turn", "Rotor turns, seen from above", "", Turn(scene), ["clockwise", "anticlockwise"]),
            new("first", "Tower of the first cylinder in the firing order", "", "1", [],
                "Number the towers clockwise from above; mark tower 1 before you start."),
            new("found", "Leads as found on towers 1, 2, 3 …", "", "", [],
                "The cylinder each tower's lead goes to, such as 1, 5, 3, 6, 4, 2."),
        ],
        (inputs, _) =>
        {
            var turn = inputs.Choice("turn") == "anticlockwise" ? RotorTurn.Anticlockwise : RotorTurn.Clockwise;
            var layout = CapLayout.Of(FiringOrder.Parse(inputs.Text("order")), turn, inputs.Whole("first"));
            var routing = LeadRouting.Of(layout, FiringOrder.Parse(inputs.Text("found")));
            var drawing = CapDrawing.Of(routing);
            return
            [
                new(
                    routing.Wrong.Count == 0 ? "All leads are right" : $"{routing.Wrong.Count} leads are wrong",
                    [],
                    drawing.Facts,
                    drawing.ToSvg()),
                .. routing.Effects.Count == 0 ? [] : new WorkedPart[]
                {
                    new("What the engine would do", [],
                    [
                        .. routing.Effects.Select(effect => $"Tower {effect.Tower} {effect.Text}. {effect.Consequence}"),
                        "Ignition off before a lead is moved; never pull a lead on a running engine.",
                    ]),
                },
            ];
        }) { Checks = ["lead-routing"] };

    private static string Words(LeadFigures lead) => lead.Standing switch
    {
        LeadStanding.Within => "Within what its kind allows.",
        LeadStanding.Above => "Above what its kind allows: aged, or broken inside.",
        LeadStanding.Below => "Below what its kind allows: another kind of lead, or a short to its neighbour.",
        _ => "Its length is needed to compare it with its kind.",
    };

    private static string Turn(BenchScene scene) =>
        scene.Vehicle.Engine?.Rotation == RotorRotation.Anticlockwise ? "anticlockwise" : "clockwise";

    private static string Metres(BenchScene scene, int cylinder) =>
        FromInspection.Last(scene, "lead-length", cylinder) is { } millimetres ? FromInspection.Text(millimetres / 1000) : "";

    private static string Field(string what, int cylinder) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}{cylinder}");
}
