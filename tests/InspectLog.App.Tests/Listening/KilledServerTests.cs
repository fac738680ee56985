using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using InspectLog.App.Tests.Web;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;

namespace InspectLog.App.Tests.Listening;

/// <summary>Four people write notes, take photos and record while the program is killed without warning, again and again: what
/// it acknowledged is in the journal, and each photo and recording is whole. <c>INSPECTLOG_KILLS=500</c> for a long run.</summary>
[Trait("Takes", "long")]
public sealed class KilledServerTests(ITestOutputHelper output) : IDisposable
{
    private const int People = 4;

    private static readonly int Kills =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_KILLS"), CultureInfo.InvariantCulture, out var kills) ? kills : 5;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-killed-");
    private readonly List<Acknowledged> _acknowledged = [];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task What_was_acknowledged_is_there_however_often_the_program_is_killed()
    {
        var seed = Environment.TickCount;
        output.WriteLine($"seed {seed}");
        var chance = new Random(seed);
        string? bench = null;
        for (var kill = 0; kill < Kills; kill++)
        {
            await using (var program = await StartAsync())
            {
                bench ??= await program.StartInspectionAsync();
                var before = Count();
                var working = Enumerable.Range(0, People).Select(person => WorkAsync(program.Client, bench, new Random(seed + (kill * People) + person), $"{kill}-{person}")).ToList();

                // A moment after some were acknowledged, so that a slow machine gets as far as a fast one.
                var enough = before + chance.Next(12);
                await Eventually.GetAsync(() => Count() > enough ? "some" : null);
                await Task.Delay(chance.Next(100), Stop);
                program.Kill();
                await Task.WhenAll(working);
            }

            Assert.Empty(Missing(bench));
        }

        output.WriteLine($"{Kills} kills, {string.Join(", ", _acknowledged.CountBy(one => one.Kind).Select(kind => $"{kind.Value} {kind.Key}"))} acknowledged");
        Assert.Equal(["notes", "photos", "recordings"], _acknowledged.Select(one => one.Kind).Distinct().Order());
    }

    private Task<ServedProgram> StartAsync() =>
        ServedProgram.StartAsync(_folder.FullName, "dotnet", [Beside("inspectlog.dll")], "--model", Path.Combine(_folder.FullName, "none"));

    /// <summary>Captures one thing after another until the program does not answer any more.</summary>
    private async Task WorkAsync(HttpClient client, string bench, Random chance, string name)
    {
        for (var n = 0; ; n++)
        {
            var (kind, content) = Some(chance.Next(3), $"{name}-{n}");
            try
            {
                using var answer = await client.PostAsync($"{bench}/{kind}{(kind == "recordings" ? $"?capture={name}-{n}" : "")}", content, Stop);
                if (answer.Headers.TryGetValues("Entry-Hash", out var hash))
                {
                    lock (_acknowledged)
                    {
                        _acknowledged.Add(new(kind, hash.Single()));
                    }
                }
            }
            catch (HttpRequestException)
            {
                return;
            }
        }
    }

    private int Count()
    {
        lock (_acknowledged)
        {
            return _acknowledged.Count;
        }
    }

    /// <summary>What was acknowledged and is not there, or is not whole; read as the next start will find it.</summary>
    private List<string> Missing(string bench)
    {
        using var garage = Garage.OpenToLook(_folder.FullName, TimeProvider.System);
        var entries = garage.Entries(bench.Split('/')[2]);
        var there = entries.Select(entry => entry.Hash).ToHashSet();
        var media = entries.Select(entry => entry.Body switch
        {
            PhotoKept photo => photo.Media,
            RecordingKept recording => recording.Media,
            _ => null,
        });
        return
        [
            .. _acknowledged.Where(one => !there.Contains(one.Hash)).Select(one => $"{one.Kind} {one.Hash}"),
            .. media.OfType<MediaFile>().Where(file => garage.Media.Check(file) != MediaCondition.Whole).Select(file => file.Sha256),
        ];
    }

    private static (string Kind, HttpContent Content) Some(int choice, string capture) => choice switch
    {
        0 => ("notes", new FormUrlEncodedContent([new("capture", capture), new("text", $"Note {capture}")])),
        1 => ("photos", new MultipartFormDataContent
        {
            { new StringContent(capture), "capture" },
            { new StringContent("plug-condition"), "check" },
            { new StringContent("1"), "cylinder" },
            { Content(WithComment(Demo("photos/marigold-air-gap.jpg"), capture), "image/jpeg"), "photo", "photo.jpg" },
        }),
        _ => ("recordings", Content(Ending(Demo("recordings/marigold-05.wav"), capture), "audio/wav")),
    };

    private static ByteArrayContent Content(byte[] bytes, string type) => new(bytes) { Headers = { ContentType = new MediaTypeHeaderValue(type) } };

    // A comment segment after the start of the picture (ITU-T T.81, B.2.4.5) makes each a file of its own.
    private static byte[] WithComment(byte[] jpeg, string comment) =>
        [.. jpeg[..2], 0xFF, 0xFE, 0, (byte)(comment.Length + 2), .. Encoding.ASCII.GetBytes(comment), .. jpeg[2..]];

    // So do other last samples of a recording.
    private static byte[] Ending(byte[] wav, string end) => [.. wav[..^end.Length], .. Encoding.ASCII.GetBytes(end)];

    private static byte[] Demo(string name) => File.ReadAllBytes(Beside(Path.Combine("demo", name)));

    private static string Beside(string name) => Path.Combine(AppContext.BaseDirectory, name);

    private sealed record Acknowledged(string Kind, string Hash);
}
