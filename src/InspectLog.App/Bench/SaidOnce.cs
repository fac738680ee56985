using InspectLog.App.Forms;

namespace InspectLog.App.Bench;

/// <summary>What a press did, kept by the browser until the page that follows it is shown: a form that is sent without
/// scripts is answered with the address of that page.</summary>
public static class SaidOnce
{
    private const string CookieName = "did";
    private const int Longest = 300;

    public static void Keep(HttpContext context, string address, string text) => context.Response.Cookies.Append(
        CookieName, Uri.EscapeDataString(text.Length <= Longest ? text : text[..Longest]), Options(address));

    /// <summary>What was kept for this page, once; null where nothing was.</summary>
    public static string? Take(HttpContext context, string address)
    {
        if (context.Request.Cookies[CookieName] is not { Length: > 0 } kept)
        {
            return null;
        }

        context.Response.Cookies.Delete(CookieName, Options(address));
        var text = PlainText.Of(Uri.UnescapeDataString(kept));
        return text.Length <= Longest ? text : null;
    }

    private static CookieOptions Options(string address) => new()
    {
        HttpOnly = true, SameSite = SameSiteMode.Strict, Path = address, MaxAge = TimeSpan.FromMinutes(1),
    };
}
