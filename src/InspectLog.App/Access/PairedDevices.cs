using System.Security.Claims;
using System.Text.Encodings.Web;
using InspectLog.App.Network;
using InspectLog.Journal;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace InspectLog.App.Access;

/// <summary>Finds out who a request comes from: by the door it came in at, or by the token of a paired device.</summary>
public sealed class PairedDevices(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory logs,
    UrlEncoder encoder,
    Garage garage,
    Sightings sightings,
    TimeProvider time)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logs, encoder)
{
    /// <summary>Name of the scheme.</summary>
    public new const string Scheme = "paired-device";

    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (CallerNow() is not { } caller)
        {
            return Task.FromResult(AuthenticateResult.NoResult());
        }

        Context.Features.Set(caller);
        var identity = new ClaimsIdentity([new Claim(ClaimTypes.Role, caller.Role.ToString())], Scheme);
        return Task.FromResult(AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), Scheme)));
    }

    private Caller? CallerNow()
    {
        if (Doors.Of(Context) == Door.Workshop)
        {
            return Caller.AtTheWorkshop;
        }

        if (Token.Shown(Request) is not { } shown)
        {
            return null;
        }

        var now = time.GetLocalNow();
        if (garage.Workshop.Accesses.Find(one => one.Holds(now) && shown.Is(one.Given.TokenSha256)) is not { } access)
        {
            return null;
        }

        sightings.Note(access.Number, now);
        return Caller.With(access);
    }
}
