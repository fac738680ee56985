using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal;
using InspectLog.Measuring;

namespace InspectLog.App.Vehicles;

/// <summary>A vehicle's own limits for a check, with their source.</summary>
public static class LimitsEndpoints
{
    /// <summary>A limit so many times beyond the largest plausible value is a mistake.</summary>
    private const double FarOut = 100;

    public static void MapLimits(this IEndpointRouteBuilder app)
    {
        var limits = app.MapGroup("/vehicles/{vehicle}/limits/{check}").WhoMay(Policies.Look, Policies.Keep);
        limits.MapGet("/", Form).WithName("limits-form");
        limits.MapPost("/", Set).WithName("set-limits");
    }

    private static IResult Form(Garage garage, string vehicle, string check, string? sheet) =>
        Find(garage, vehicle, sheet, check) is { } found ? Show(garage, found, null) : Results.NotFound();

    private static async Task<IResult> Set(HttpContext context, Garage garage, string vehicle, string check, string? sheet)
    {
        if (Find(garage, vehicle, sheet, check) is not { } found)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (form.Ticked("clear"))
        {
            garage.Append(vehicle, PersonAtWork.Of(context), now => Cleared(now, found));
            return After(garage, vehicle, check);
        }

        if (Read(form, found) is not { } limits)
        {
            return Show(garage, found, form.Refused("limits"));
        }

        garage.Append(vehicle, PersonAtWork.Of(context), _ => [limits]);
        return After(garage, vehicle, check);
    }

    /// <summary>Limits of the check that were set for this sheet and, before limits named their sheet, for any: both
    /// would count.</summary>
    private static EntryBody[] Cleared(VehicleState now, LimitedCheck one) =>
        [.. LimitsFor.Own(now, one.Sheet).Where(own => own.Check == one.Check.Id).Select(own => new LimitsCleared(own.Check) { Sheet = own.Sheet })];

    private static LimitsSet? Read(PostedForm form, LimitedCheck one)
    {
        var check = one.Check;
        var lower = Bound(form, "lower", check);
        var upper = Bound(form, "upper", check);
        var source = form.Required("source", "Say where these limits come from, such as the manual and its page.");
        if (!form.IsValid)
        {
            return null;
        }

        try
        {
            var set = new LimitOverride(check.Id, Limits.Of(lower, upper), source);
            return new LimitsSet(check.Id, set.Limits.Lower, set.Limits.Upper, set.Source) { Sheet = one.Sheet.Id };
        }
        catch (ArgumentException problem)
        {
            form.Refuse("upper", problem.Message);
            return null;
        }
    }

    /// <summary>A limit is read as a measured value is, so that a comma never makes it ten times wrong. It may lie
    /// outside of what the sheet holds plausible, as cars differ, but not by orders of magnitude.</summary>
    private static double? Bound(PostedForm form, string field, Check check)
    {
        var text = form.Text(field);
        if (text.Length == 0 || form.Certain(field, form.Number(text, check.Measurand!)) is not { } limit)
        {
            return null;
        }

        var sheets = BuiltInSheets.All.Select(sheet => sheet.Find(check.Id)?.Measurand).First(one => one is not null)!;
        var farthest = FarOut * Math.Max(Math.Abs(sheets.Plausible.From), Math.Abs(sheets.Plausible.To));
        if (Math.Abs(limit) > farthest)
        {
            var span = Printed.Span(sheets.Plausible.From, sheets.Plausible.To, sheets.DisplayUnit);
            form.Refuse(field, $"{Printed.Value(limit, sheets.DisplayUnit)} is far from anything this check reads, which lies within {span} as a rule. Check the number and its unit.");
        }

        return limit;
    }

    /// <summary>The check of the sheet that is named; of the first that has it where none is, as addresses from before
    /// limits named their sheet.</summary>
    private static LimitedCheck? Find(Garage garage, string vehicle, string? sheetId, string check) =>
        garage.FindVehicle(vehicle) is { } state
        && BuiltInSheets.All.FirstOrDefault(one => (sheetId is null || one.IsOneWith(sheetId)) && one.Find(check) is not null) is { } sheet
        && LimitsFor.Vehicle(state, sheet).Find(check) is { Measurand: not null } found
            ? new(state, sheet, found)
            : null;

    private static IResult Show(Garage garage, LimitedCheck found, RefusedForm? refused) =>
        Page.Of<LimitsPage, LimitsFormView>(
            new LimitsFormView(found.Vehicle, found.Sheet, found.Check, found.Check.Measurand!, refused, garage.Problems),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static IResult After(Garage garage, string vehicle, string check) =>
        Results.Redirect(garage.FindVehicle(vehicle)?.OpenInspection is { } open
            ? Links.Check(vehicle, open.Number, check)
            : Links.Vehicle(vehicle));

    private sealed record LimitedCheck(VehicleState Vehicle, CheckSheet Sheet, Check Check);
}
