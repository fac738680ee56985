using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using InspectLog.App.Forms;
using InspectLog.App.Media;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench;

/// <summary>Reads the stamp of what is posted: <c>capture</c>, which the page or the device made up and uses once, and
/// <c>captured</c>, the time by its clock; and <c>waited</c>, the seconds it waited there for the network.</summary>
public static class PostedStamp
{
    private const string Id = "capture";
    private const string Time = "captured";
    private const string Wait = "waited";
    private const int LongestId = 100;

    /// <summary>The stamp of a form; null where it brings none. What was typed is part of its id: a form that is sent
    /// again with something else in it, because its first answer got lost and the person went on, is another capture.
    /// </summary>
    public static CaptureStamp? Of(PostedForm form, IQueryCollection query, TimeProvider clock) =>
        IsId(form.Text(Id)) ? new($"{form.Text(Id)}.{Digest(form)}", At(form.Text(Time), clock)) { Waited = Waited(query) } : null;

    /// <summary>The stamp of a recording, in the address it is sent to; null where it brings none.</summary>
    public static CaptureStamp? Of(IQueryCollection query, TimeProvider clock) =>
        IsId(query[Id].ToString()) ? new(query[Id].ToString(), At(query[Time].ToString(), clock)) { Waited = Waited(query) } : null;

    // In the address and not in the form: what is sent once more has waited longer, and is the same capture.
    private static long? Waited(IQueryCollection query) =>
        long.TryParse(query[Wait].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and <= CaptureStamp.LongestWait
            ? seconds
            : null;

    private static bool IsId(string id) => id.Length is > 0 and <= LongestId && id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');

    // A page without scripts cannot tell the time: then it is when the form came.
    private static DateTimeOffset At(string text, TimeProvider clock)
    {
        var isTime = DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var at);
        return WholeMilliseconds(isTime ? at : clock.GetLocalNow());
    }

    private static DateTimeOffset WholeMilliseconds(DateTimeOffset time) =>
        time.AddTicks(-(time.Ticks % TimeSpan.TicksPerMillisecond));

    private static string Digest(PostedForm form)
    {
        var typed = new StringBuilder();
        // A photo is part of the stamp by itself, whether it came whole or in pieces.
        foreach (var (field, text) in form.Fields.Where(field => field.Name is not (Id or Time or PhotoPieces.Field)))
        {
            typed.Append(CultureInfo.InvariantCulture, $"{field.Length}:{field}{text.Length}:{text}");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(typed.ToString())))[..12];
    }
}
