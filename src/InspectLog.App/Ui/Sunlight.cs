namespace InspectLog.App.Ui;

/// <summary>Whether this browser shows pages for bright sunlight: black on white with heavy lines, whatever colours the
/// system asks for. Remembered for a year, and told by the server, so that no page is painted in the wrong colours first.
/// </summary>
public static class Sunlight
{
    private const string CookieName = "sunlight";

    /// <summary>Whether it is on in the browser that asks.</summary>
    public static bool IsOn(HttpContext? context) => context?.Request.Cookies[CookieName] == "on";

    /// <summary>Remembers whether it is on.</summary>
    public static void Remember(HttpContext context, bool isOn)
    {
        var options = new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, MaxAge = TimeSpan.FromDays(365) };
        if (isOn)
        {
            context.Response.Cookies.Append(CookieName, "on", options);
        }
        else
        {
            context.Response.Cookies.Delete(CookieName, options);
        }
    }
}
