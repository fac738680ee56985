using System.Security.Cryptography;
using System.Text;
using InspectLog.Inspecting;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Which checks' cautions a person has had before them in this inspection, as the browser remembers it until it
/// is closed. They count as seen once another check was opened after them: while a check stays open, what is recorded in
/// it does not fold them away.</summary>
public static class SeenCautions
{
    private const string CookieName = "seen";

    /// <summary>Takes down that a check is shown.</summary>
    /// <param name="context">The request.</param>
    /// <param name="scene">The inspection.</param>
    /// <param name="check">The check that is shown.</param>
    /// <param name="person">To whom.</param>
    /// <returns>Whether its cautions were seen before, so that a line is enough.</returns>
    public static bool Show(HttpContext context, BenchScene scene, string check, string person)
    {
        var kept = Read(context.Request.Cookies[CookieName], scene, person);
        if (kept.Open == check)
        {
            return false;
        }

        var seen = kept.Seen.Append(kept.Open).Where(one => one.Length > 0).Distinct().ToList();
        var isSeen = seen.Contains(check) || HasRecorded(scene.Inspection, check, person);
        context.Response.Cookies.Append(
            CookieName,
            $"{Mark(person)}.{(isSeen ? "" : check)}.{string.Join('_', seen)}",
            new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Path = Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number),
            });
        return isSeen;
    }

    /// <summary>What was kept for this person; nothing where it was kept for another, or makes no sense.</summary>
    private static (string Open, IReadOnlyList<string> Seen) Read(string? kept, BenchScene scene, string person) =>
        kept?.Split('.') is [var mark, var open, var seen] && mark == Mark(person)
            ? (Known(scene, open) ? open : "", [.. seen.Split('_').Where(one => Known(scene, one))])
            : ("", []);

    private static bool Known(BenchScene scene, string check) => scene.Sheet.Find(check) is not null;

    private static bool HasRecorded(InspectionState inspection, string check, string person) =>
        inspection.Readings.Exists(one => one.Body.Check == check && one.History.By == person)
        || inspection.Observations.Exists(one => one.Body.Check == check && one.History.By == person)
        || inspection.Actions.Exists(one => one.Body.Check == check && one.History.By == person);

    private static string Mark(string person) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(person)))[..12];
}
