using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.App.Instruments;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Takes records made by hand: readings, brackets, observations, actions; leaves checks out; withdraws.</summary>
public static class RecordEndpoints
{
    public static void MapRecords(this IEndpointRouteBuilder app)
    {
        var bench = app.MapGroup(BenchEndpoints.Base);
        bench.MapPost("/readings", Reading).WithName("record-reading");
        bench.MapPost("/brackets", GaugeBracket).WithName("record-bracket");
        bench.MapPost("/observations", Observation).WithName("record-observation");
        bench.MapPost("/actions", Action).WithName("record-action");
        bench.MapPost("/checks/{check}/leave-out", LeaveOut).WithName("leave-out");
        bench.MapPost("/entries/{entry:long}/withdraw", Withdraw).WithName("withdraw");
    }

    private static async Task<IResult> Reading(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place?.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return desk.Show(context, scene, form.Refused("reading"));
        }

        var instrument = InstrumentChoice.For(measurand, desk.Garage.Workshop, form.Text("instrument"))[0];
        var values = ReadingFields.Values(form, measurand, out var ambiguity);
        var conditions = ReadingConditions.Read(form, measurand, values);
        if (ambiguity is not null && form.IsValid)
        {
            var question = new NumberQuestion(
                place.Check.Id, place.Cylinder, form.Text("value"), instrument.Id, ReadingConditions.Typed(form), ambiguity);
            return desk.Show(context, scene, question: question);
        }

        if (!form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("reading"));
        }

        var asGiven = $"{form.Text("value")} {form.Text("unit")}".Trim();
        var given = new GivenReading(place.Check, place.Cylinder, values, null, asGiven, instrument, []);
        return Decided(context, desk, scene, form, "reading", conditions.Of(given), At(place));
    }

    private static async Task<IResult> GaugeBracket(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var place = PlaceFields.Read(form, scene.Sheet);
        if (place?.Check.Measurand is not { } measurand)
        {
            form.Refuse("check", "Choose a check that is measured.");
            return desk.Show(context, scene, form.Refused("bracket"));
        }

        if (ReadingFields.Bracket(form, measurand) is not { } bracket)
        {
            return desk.Show(context, scene, form.Refused("bracket"));
        }

        var asGiven = $"{form.Text("goes")} goes, {form.Text("stops")} stops {form.Text("unit")}".Trim();
        var given = new GivenReading(place.Check, place.Cylinder, [], bracket, asGiven, null, []);
        return Decided(context, desk, scene, form, "bracket", given, At(place));
    }

    /// <summary>Decides and records a reading; one that cannot be used is refused with the reason.</summary>
    private static IResult Decided(
        HttpContext context, BenchDesk desk, BenchScene scene, PostedForm form, string name, GivenReading given, BenchFocus at)
    {
        ReadingDecided decided;
        try
        {
            decided = ReadingRecords.Decide(scene.Inspection.Number, scene.Sheet.Rule, given);
        }
        catch (ArgumentException problem)
        {
            form.Refuse(given.Bracket is null ? "value" : "stops", problem.Message);
            return desk.Show(context, scene, form.Refused(name));
        }

        return desk.Show(context, desk.Record(scene, decided), at: at);
    }

    /// <summary>A reading is shown at its place as soon as it is decided, whichever place was in front.</summary>
    private static BenchFocus At(CheckPlace place) => new(place.Check.Id, place.Cylinder);

    private static async Task<IResult> Observation(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var places = PlaceFields.ReadSeveral(form, scene.Sheet, out var check);
        var condition = form.Text("condition");
        if (check is not null && check.Conditions.All(known => known.Id != condition))
        {
            form.Refuse("condition", "Choose what you saw from the list.");
        }

        if (!form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("observation"));
        }

        var absent = form.Ticked("absent");
        return desk.Show(context, desk.Record(scene, now =>
        [
            .. places.Select(cylinder => new ObservationMade(number, check!.Id, cylinder, condition, absent, null)),
            .. LooseEndRules.Following(
                now.Inspection, now.Sheet, new ObservationMade(number, check!.Id, null, condition, absent, null)),
        ]));
    }

    private static async Task<IResult> Action(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var places = PlaceFields.ReadSeveral(form, scene.Sheet, out var check);
        var action = form.Text("action");
        if (check is not null && !check.Actions.Contains(action))
        {
            form.Refuse("action", "Choose what was done from the list.");
        }

        if (!form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("action"));
        }

        return desk.Show(context, desk.Record(scene, now => [.. places
            .Select(cylinder => new ActionDone(number, check!.Id, cylinder, action, null))
            .SelectMany(done => LooseEndRules.Following(now.Inspection, now.Sheet, done).Prepend(done))]));
    }

    private static async Task<IResult> LeaveOut(
        HttpContext context, BenchDesk desk, string vehicle, long number, string check)
    {
        if (desk.Find(vehicle, number) is not { } scene || scene.Sheet.Find(check) is null)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = form.Required("reason", "Say why it is left out, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new CheckLeftOut(number, check, reason)))
            : desk.Show(context, scene, form.Refused("leave-out"));
    }

    private static async Task<IResult> Withdraw(
        HttpContext context, BenchDesk desk, string vehicle, long number, long entry)
    {
        if (desk.Find(vehicle, number) is not { } scene || !Withdrawable(scene, entry))
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var reason = form.Required("reason", "Say why it no longer counts, in a few words.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new EntryWithdrawn(entry, reason)))
            : desk.Show(context, scene, form.Refused(string.Create(CultureInfo.InvariantCulture, $"withdraw-{entry}")));
    }

    private static bool Withdrawable(BenchScene scene, long entry)
    {
        var inspection = scene.Inspection;
        return inspection.Readings.Exists(one => one.Sequence == entry)
            || inspection.Observations.Exists(one => one.Sequence == entry)
            || inspection.Actions.Exists(one => one.Sequence == entry)
            || inspection.Captures.Exists(one => one.Sequence == entry && one is not Journal.State.VoiceNote);
    }
}
