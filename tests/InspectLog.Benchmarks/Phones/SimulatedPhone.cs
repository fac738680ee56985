using System.Diagnostics;
using System.Net.Http.Headers;

namespace InspectLog.Benchmarks.Phones;

/// <summary>One paired phone with a bench open.</summary>
/// <param name="client">What it talks through.</param>
/// <param name="bench">Address of its inspection.</param>
/// <param name="seed">What it does when is chosen by it.</param>
/// <param name="live">Where it says what it sends and shows.</param>
internal sealed class SimulatedPhone(HttpClient client, string bench, int seed, Live live)
{
    private const double SecondsBetween = 4;

    // What a page waits for more news before it loads itself anew.
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(120);

    // How soon after one load the next may begin.
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(600);

    // What it waits more by chance, so that phones do not load all at once.
    private static readonly TimeSpan Spread = TimeSpan.FromMilliseconds(250);

    private readonly Random _random = new(seed);
    private readonly Random _pause = new(seed + 1000);
    private int _captures;
    private volatile bool _again;
    private long _loadedAt = Stopwatch.GetTimestamp();

    /// <summary>Listens and works until the end.</summary>
    public async Task WorkAsync(Answers answers, CancellationToken end)
    {
        try
        {
            await Task.WhenAll(ListenAsync(answers, end), DoAsync(answers, end));
        }
        catch (OperationCanceledException) when (end.IsCancellationRequested)
        {
            // The day is over.
        }
    }

    /// <summary>Loads the bench as a page does that has news.</summary>
    public async Task LoadBenchAsync(Answers answers, CancellationToken end)
    {
        var start = Stopwatch.GetTimestamp();
        using var request = new HttpRequestMessage(HttpMethod.Get, bench);
        request.Headers.Add("HX-Request", "true");
        using var answer = await client.SendAsync(request, end);
        var page = await answer.Content.ReadAsStringAsync(end);
        answers.Page(Stopwatch.GetElapsedTime(start));
        live.Shown(seed, bench, page);
        if (!answer.IsSuccessStatusCode)
        {
            answers.Faults.Enqueue($"bench: {(int)answer.StatusCode}");
        }
    }

    private async Task ListenAsync(Answers answers, CancellationToken end)
    {
        using var news = new StreamReader(await client.GetStreamAsync($"{bench}/events", end));
        var loading = Task.CompletedTask;
        while (await news.ReadLineAsync(end) is { } line)
        {
            if (line != "event: changed")
            {
                continue;
            }

            // News that come while it waits or loads are one more load, as in the page.
            _again = !loading.IsCompleted;
            if (loading.IsCompleted)
            {
                await loading;
                loading = AfterAsync(answers, end);
            }
        }

        answers.Faults.Enqueue("The news ended.");
    }

    private async Task AfterAsync(Answers answers, CancellationToken end)
    {
        var since = Stopwatch.GetElapsedTime(_loadedAt);
        await Task.Delay(since + Settle > Pace ? Settle : Pace - since + (Spread * _pause.NextDouble()), end);
        _loadedAt = Stopwatch.GetTimestamp();
        await LoadBenchAsync(answers, end);
        if (_again)
        {
            _again = false;
            await AfterAsync(answers, end);
        }
    }

    private async Task DoAsync(Answers answers, CancellationToken end)
    {
        while (true)
        {
            await Task.Delay(TimeSpan.FromSeconds(-SecondsBetween * Math.Log(1 - _random.NextDouble())), end);
            var start = Stopwatch.GetTimestamp();
            using var answer = await CaptureAsync(_random.NextDouble(), end);
            answers.Capture(Stopwatch.GetElapsedTime(start));
            if ((int)answer.StatusCode >= 400)
            {
                answers.Faults.Enqueue($"{answer.RequestMessage!.RequestUri!.AbsolutePath}: {(int)answer.StatusCode}");
            }
        }
    }

    private Task<HttpResponseMessage> CaptureAsync(double choice, CancellationToken end) => choice switch
    {
        < 0.1 => client.PostAsync($"{bench}/recordings?capture={Capture()}", File("demo/recordings/marigold-05.wav", "audio/wav"), end),
        < 0.3 => client.PostAsync($"{bench}/photos", Photo(), end),
        < 0.55 => client.PostAsync($"{bench}/observations", Form(("check", "plug-condition"), ("cylinder", $"{_random.Next(1, 7)}"), ("condition", "wet")), end),
        < 0.75 => client.PostAsync($"{bench}/readings", Form(("check", "coil-secondary-resistance"), ("value", $"{9 + _random.NextDouble():0.00}"), ("unit", "kΩ")), end),
        _ => client.PostAsync($"{bench}/notes", Note(), end),
    };

    private FormUrlEncodedContent Note()
    {
        var words = $"The lamp flickers when door {seed} is shut for the {_captures}th time.";
        live.Sent(words, bench);
        return Form(("text", words));
    }

    private MultipartFormDataContent Photo() => new()
    {
        { new StringContent(Capture()), "capture" },
        { new StringContent("plug-condition"), "check" },
        { new StringContent($"{_random.Next(1, 7)}"), "cylinder" },
        { File("demo/photos/marigold-air-gap.jpg", "image/jpeg"), "photo", "photo.jpg" },
    };

    private FormUrlEncodedContent Form(params (string Name, string Value)[] fields) =>
        new(fields.Append(("capture", Capture())).Select(field => KeyValuePair.Create(field.Item1, field.Item2)));

    private string Capture() => $"phone-{seed}-{++_captures}";

    private static ByteArrayContent File(string path, string type) => new(System.IO.File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, path)))
    {
        Headers = { ContentType = new MediaTypeHeaderValue(type) },
    };
}
