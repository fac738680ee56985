using InspectLog.App.Access;
using InspectLog.Journal.Record;

namespace InspectLog.App.People;

/// <summary>Who uses this browser: on a paired device whose it is; at the workshop's own computer the name chosen there,
/// remembered for a year.</summary>
public static class PersonAtWork
{
    /// <summary>Who did it, where nobody was chosen.</summary>
    public const string Nobody = "Workshop";

    private const string CookieName = "technician";

    /// <summary>Who makes what a request brings, and with what; <see cref="Nobody"/> where no name was chosen.</summary>
    public static Author Of(HttpContext context) => As(context, Chosen(context) ?? Nobody);

    /// <summary>The same, under a name that was just typed. A paired device goes by the name it was paired for.</summary>
    public static Author As(HttpContext context, string name) =>
        Caller.Of(context) is { Person: { } person, Device: { } device } ? new Author(person, device) : name;

    /// <summary>Whose device it is, or the name chosen in this browser; null where none was, or where what is remembered is
    /// no name.</summary>
    public static string? Chosen(HttpContext context) => Caller.Of(context)?.Person ?? Remembered(context);

    private static string? Remembered(HttpContext context) =>
        context.Request.Cookies[CookieName] is { Length: > 0 } kept
        && Uri.UnescapeDataString(kept).Trim() is var name
        && PersonName.Problem(name) is null
        && name != Nobody
            ? name
            : null;

    /// <summary>Remembers a name that has no <see cref="PersonName.Problem"/>.</summary>
    public static void Remember(HttpContext context, string name) => context.Response.Cookies.Append(
        CookieName,
        Uri.EscapeDataString(name),
        new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Secure = context.Request.IsHttps, MaxAge = TimeSpan.FromDays(365) });
}
