using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Devices;

/// <summary>Pairing, as the device sees it. Open to strangers: it is how they become known.</summary>
public static partial class PairEndpoints
{
    public static void MapPairing(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.Pair, (HttpContext context) => Show(context, null)).AllowAnonymous().WithName("pair");
        app.MapPost(Links.Pair, Take).AllowAnonymous().WithName("take-pairing");
    }

    /// <summary>Takes what the picture holds (a code of two minutes, or a link that was given away), or a typed code.</summary>
    private static async Task<IResult> Take(
        HttpContext context, Garage garage, PairingCodes codes, ILoggerFactory logs, TimeProvider time)
    {
        if (Doors.Of(context) != Door.Network)
        {
            return Results.Redirect(Links.Pair);
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var given = form.Text("secret") is { Length: > 0 } secret ? secret : form.Text("code");
        var now = time.GetLocalNow();
        if (Token.Read(given) is { } shown
            && garage.Workshop.Accesses.Find(one => one.Given.Role == AccessRole.Viewer && one.Holds(now) && shown.Is(one.Given.TokenSha256)) is { } link)
        {
            if (Caller.Of(context)?.May(Policies.Look) != true)
            {
                // Whoever may see more anyway keeps the pairing they have.
                shown.GiveTo(context.Response, now, link.Given.Until);
            }

            return Results.Redirect(Links.Report(link.Given.Vehicle!, link.Given.Inspection!.Value));
        }

        if (codes.Redeem(given) is not { Invitation: var invitation })
        {
            LogRefused(logs.CreateLogger(typeof(PairEndpoints)), context.Connection.RemoteIpAddress, codes.IsLocked);
            return Show(context, codes.IsLocked
                ? "Too many wrong codes were typed, so none works now. Make a new one on the workshop’s computer."
                : "That did not work: a code works once, for two minutes. Look again, or make a new one on the workshop’s computer.");
        }

        var token = Token.Make();
        garage.AppendToWorkshop(
            new(invitation.Person, invitation.Device),
            new AccessGiven(invitation.Person, invitation.Device, invitation.Role, token.Sha256) { Vehicle = invitation.Vehicle });
        token.GiveTo(context.Response, now, until: null);
        PersonAtWork.Remember(context, invitation.Person);
        return Results.Redirect(Links.Garage);
    }

    // Neither the code nor the secret that was tried: it may be a right one that came too late.
    [LoggerMessage(LogLevel.Warning, "Pairing refused to {Address}. Typed codes are locked: {Locked}.")]
    private static partial void LogRefused(ILogger log, System.Net.IPAddress? address, bool locked);

    private static IResult Show(HttpContext context, string? problem) => Page.Of<PairPage, PairView>(
        new(Caller.Of(context), problem), problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
