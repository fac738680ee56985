using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Takes records made by hand: readings, brackets, observations, actions; leaves checks out.</summary>
public static class RecordEndpoints
{
    public static void MapRecords(this IEndpointRouteBuilder app)
    {
        var bench = app.MapInspection(Policies.Look, Policies.Record);
        bench.MapPost("/readings", Reading).WithName("record-reading");
        bench.MapPost("/brackets", GaugeBracket).WithName("record-bracket");
        bench.MapPost("/observations", Observation).WithName("record-observation");
        bench.MapPost("/actions", Action).WithName("record-action");
        bench.MapPost("/checks/{check}/leave-out", LeaveOut).WithName("leave-out");
    }

    private static async Task<IResult> Reading(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place?.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return desk.Show(context, scene, form.Refused("reading"));
        }

        var instruments = InstrumentChoice.For(measurand, desk.Garage.Workshop, form.Text("instrument"));
        var taken = ReadingFields.Values(form, place.Check, values => ReadOff.By(instruments[0], values, instruments), out var asked);
        var conditions = ReadingConditions.Read(form, measurand);
        if (taken is not null)
        {
            conditions.RefuseUnshownLeads(form, taken.Instrument, instruments);
        }

        if (asked is not null && form.IsValid)
        {
            var question = Question(form, place, false, ["value", "instrument", .. ReadingConditions.Fields], asked);
            return desk.Show(context, scene, question: question, at: At(place));
        }

        if (!form.IsValid || taken is null)
        {
            return desk.Show(context, scene, form.Refused("reading"), at: At(place));
        }

        var asGiven = $"{form.Text("value")} {form.Text("unit")}".Trim();
        var given = new GivenReading(place.Check, place.Cylinder, taken.Values, null, asGiven, taken.Instrument, []);
        return Decided(context, desk, scene, form, "reading", conditions.Of(given), At(place));
    }

    private static async Task<IResult> GaugeBracket(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place?.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return desk.Show(context, scene, form.Refused("bracket"));
        }

        if (GaugeFields.Read(form, place.Check, out var asked) is not { } bracket)
        {
            return asked is null
                ? desk.Show(context, scene, form.Refused("bracket"), at: At(place))
                : desk.Show(context, scene, question: Question(form, place, true, GaugeFields.Names, asked), at: At(place));
        }

        var each = form.Text("tolerance") is { Length: > 0 } tolerance ? $"; each blade ± {tolerance}" : "";
        var asGiven = $"{form.Text("goes")} goes, {form.Text("stops")} stops {form.Text("unit")}{each}".Trim();
        var gauges = InstrumentChoice.Gauges(measurand.Kind, desk.Garage.Workshop).FirstOrDefault(one => one.Id == form.Text("gauges"));
        var given = new GivenReading(place.Check, place.Cylinder, [], bracket, asGiven, gauges, []);
        return Decided(context, desk, scene, form, "bracket", given, At(place));
    }

    private static NumberQuestion Question(
        PostedForm form, CheckPlace place, bool isBracket, IEnumerable<string> fields, AskedNumber asked) => new(
        place.Check.Id,
        place.Cylinder,
        isBracket,
        [.. fields.Append("unit").Select(field => (field, form.Text(field))).Where(one => one.Item2.Length > 0)],
        asked);

    /// <summary>Decides and records a reading; one that cannot be used is refused with the reason.</summary>
    private static IResult Decided(
        HttpContext context, BenchDesk desk, BenchScene scene, PostedForm form, string name, GivenReading given, BenchFocus at)
    {
        ReadingDecided decided;
        try
        {
            decided = ReadingRecords.Decide(scene, given);
        }
        catch (ArgumentException problem)
        {
            form.Refuse(given.Bracket is null ? "value" : "stops", problem.Message);
            return desk.Show(context, scene, form.Refused(name), at: at);
        }

        return desk.Show(context, desk.Record(scene, decided), at: at);
    }

    /// <summary>A reading is shown at its place as soon as it is decided, whichever place was in front.</summary>
    private static BenchFocus At(CheckPlace place) => new(place.Check.Id, place.Cylinder);

    private static async Task<IResult> Observation(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var places = PlaceFields.ReadSeveral(form, scene.Sheet, out var check);
        var condition = check is null ? null : RecordFields.Condition(form, check);
        if (condition is null || !form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("observation"));
        }

        var absent = form.Ticked("absent");
        return desk.Show(context, desk.Record(scene, now => LooseEndRules.WithWhatFollows(
            now, [.. places.Select(cylinder => new ObservationMade(number, check!.Id, cylinder, condition, absent, null))])));
    }

    private static async Task<IResult> Action(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var places = PlaceFields.ReadSeveral(form, scene.Sheet, out var check);
        var action = check is null ? null : RecordFields.Action(form, check);
        if (action is null || !form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("action"));
        }

        return desk.Show(context, desk.Record(scene, now => LooseEndRules.WithWhatFollows(
            now, [.. places.Select(cylinder => new ActionDone(number, check!.Id, cylinder, action, null))])));
    }

    private static async Task<IResult> LeaveOut(
        HttpContext context, BenchDesk desk, string vehicle, long number, string check)
    {
        var scene = desk.Scene;
        if (scene.Sheet.Find(check) is null)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = LeavingOut.UsualReasons.Contains(form.Text("usual"))
            ? form.Text("usual")
            : form.Required("reason", "Say why it is left out, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new CheckLeftOut(number, check, reason)))
            : desk.Show(context, scene, form.Refused("leave-out"));
    }
}
