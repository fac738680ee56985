using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Vehicles;

/// <summary>A vehicle's own limits for a check, with their source.</summary>
public static class LimitsEndpoints
{
    public static void MapLimits(this IEndpointRouteBuilder app)
    {
        var limits = app.MapGroup("/vehicles/{vehicle}/limits/{check}");
        limits.MapGet("/", Form).WithName("limits-form");
        limits.MapPost("/", Set).WithName("set-limits");
    }

    private static IResult Form(Garage garage, string vehicle, string check) =>
        Find(garage, vehicle, check) is { } found ? Show(garage, found, null) : Results.NotFound();

    private static async Task<IResult> Set(HttpContext context, Garage garage, string vehicle, string check)
    {
        if (Find(garage, vehicle, check) is not { } found)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (form.Ticked("clear"))
        {
            garage.Append(vehicle, Technician.Of(context), now => now.Limits.ContainsKey(check) ? [new LimitsCleared(check)] : []);
            return After(garage, vehicle, check);
        }

        if (Read(form, found.Check) is not { } limits)
        {
            return Show(garage, found, form.Refused("limits"));
        }

        garage.Append(vehicle, Technician.Of(context), _ => [limits]);
        return After(garage, vehicle, check);
    }

    private static LimitsSet? Read(PostedForm form, Check check)
    {
        var lower = Bound(form, "lower", check.Measurand!);
        var upper = Bound(form, "upper", check.Measurand!);
        var source = form.Required("source", "Say where these limits come from, such as the manual and its page.");
        if (!form.IsValid)
        {
            return null;
        }

        try
        {
            var set = new LimitOverride(check.Id, Limits.Of(lower, upper), source);
            return new LimitsSet(check.Id, set.Limits.Lower, set.Limits.Upper, set.Source);
        }
        catch (ArgumentException problem)
        {
            form.Refuse("upper", problem.Message);
            return null;
        }
    }

    /// <summary>A limit is read as a measured value is, so that a comma never makes it ten times wrong; a limit may lie
    /// anywhere, so the plausible span does not settle what is ambiguous.</summary>
    private static double? Bound(PostedForm form, string field, Measurand measurand)
    {
        var text = form.Text(field);
        return text.Length == 0 ? null : form.Certain(field, form.Number(text, measurand));
    }

    private static (VehicleState Vehicle, Check Check)? Find(Garage garage, string vehicle, string check) =>
        garage.FindVehicle(vehicle) is { } state
        && BuiltInSheets.All.Select(sheet => LimitsFor.Vehicle(state, sheet).Find(check)).FirstOrDefault(one => one is not null)
            is { Measurand: not null } found
            ? (state, found)
            : null;

    private static IResult Show(Garage garage, (VehicleState Vehicle, Check Check) found, RefusedForm? refused) =>
        Page.Of<LimitsPage, LimitsFormView>(
            new LimitsFormView(found.Vehicle, found.Check, found.Check.Measurand!, refused, garage.Problems),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static IResult After(Garage garage, string vehicle, string check) =>
        Results.Redirect(garage.FindVehicle(vehicle)?.OpenInspection is { } open
            ? Links.Check(vehicle, open.Number, check)
            : Links.Vehicle(vehicle));
}
