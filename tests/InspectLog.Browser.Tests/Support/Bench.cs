using System.Text.Json;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>What tests of the bench look at: the journal behind it, and where things stand on the screen.</summary>
internal static class Bench
{
    /// <summary>The entries of a kind, in the order of the journal.</summary>
    public static List<JsonElement> Entries(string data, string kind) =>
        [.. File.ReadLines(Path.Combine(data, "vehicles", "marigold", "journal.jsonl"))
            .Select(line => JsonDocument.Parse(line).RootElement)
            .Where(entry => entry.GetProperty("kind").GetString() == kind)];

    /// <summary>How far an element is below the top of the window, pixels.</summary>
    public static Task<double> TopAsync(this ILocator element) =>
        element.EvaluateAsync<double>("one => one.getBoundingClientRect().top");

    /// <summary>Whether an element can be seen in full: in the window, and under nothing else.</summary>
    public static Task<bool> IsInViewAsync(this ILocator element) => element.EvaluateAsync<bool>("""
        one => {
          const { left, top, bottom, width } = one.getBoundingClientRect();
          const isAt = (y) => one.contains(document.elementFromPoint(left + Math.min(width / 2, 20), y));
          return top >= 0 && bottom <= innerHeight && isAt(top + 3) && isAt(bottom - 3);
        }
        """);

    /// <summary>Sends a recording as the Say button does once it has one.</summary>
    /// <param name="page">The bench.</param>
    /// <param name="wav">The recording; null sends a second of a tone.</param>
    public static async Task SendRecordingAsync(this IPage page, byte[]? wav = null) => await page.EvaluateAsync(
        """
        async (wav) => {
          const app = await import(document.querySelector("script[type=module]").src); // the very one of the page
          const [{ post }, { addressOf }, { encodeWav }] = [app.$outbox, app.$recording_address, app.$wav];
          const sound = wav
            ? new Blob([Uint8Array.from(atob(wav), one => one.charCodeAt(0))], { type: "audio/wav" })
            : encodeWav(Float32Array.from({ length: 16000 }, (_, i) => 0.1 * Math.sin(i * 0.3)));
          post(sound, addressOf(), new Date(Date.UTC(2026, 4, 3, 8, 11, 12, 345)));
        }
        """,
        wav is null ? null : Convert.ToBase64String(wav));
}
