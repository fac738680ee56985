namespace InspectLog.App.Vehicles;

/// <summary>Who uses this browser, remembered from the last inspection that was started in it.</summary>
public static class Technician
{
    private const string CookieName = "technician";
    private const string Nobody = "Workshop";

    /// <summary>The name; "Workshop" where nobody has given one.</summary>
    public static string Of(HttpContext context) =>
        context.Request.Cookies[CookieName] is { Length: > 0 } text ? Uri.UnescapeDataString(text) : Nobody;

    public static void Remember(HttpContext context, string name) => context.Response.Cookies.Append(
        CookieName,
        Uri.EscapeDataString(name),
        new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, MaxAge = TimeSpan.FromDays(365) });
}
