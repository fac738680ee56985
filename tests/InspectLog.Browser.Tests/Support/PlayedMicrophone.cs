using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>A microphone that hears nothing until a test plays a sound into it: for what must not depend on where in a
/// sound the page is by now. (<see cref="InstalledChromium.ThatHearsAsync"/> plays its file from the moment it is
/// opened, whatever the page is at.)</summary>
internal static class PlayedMicrophone
{
    /// <summary>Puts it in the place of the browser's own.</summary>
    public const string Script = """
        {
          let context, into;
          navigator.mediaDevices.getUserMedia = async () => {
            context = new AudioContext();
            into = context.createMediaStreamDestination();
            return (globalThis.theStream = into.stream);
          };
          globalThis.playIntoMicrophone = async (wav) => {
            const bytes = Uint8Array.from(atob(wav), one => one.charCodeAt(0));
            const source = new AudioBufferSourceNode(context, { buffer: await context.decodeAudioData(bytes.buffer) });
            const ended = new Promise(resolve => { source.onended = resolve; });
            source.connect(into);
            source.start();
            await ended;
          };
        }
        """;

    /// <summary>Plays a sound to its end.</summary>
    /// <param name="page">A page whose microphone is open.</param>
    /// <param name="sound">The sound.</param>
    /// <param name="then">What the page is to do at that very moment.</param>
    public static async Task PlayAsync(this IPage page, Sound sound, string then = "") => await page.EvaluateAsync(
        $"async (wav) => {{ await playIntoMicrophone(wav); {then} }}",
        Convert.ToBase64String(await File.ReadAllBytesAsync(sound.Path, TestContext.Current.CancellationToken)));
}
