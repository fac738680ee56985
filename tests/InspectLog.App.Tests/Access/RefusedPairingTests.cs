using System.Collections.Concurrent;
using System.Net;
using Microsoft.Extensions.Logging;

namespace InspectLog.App.Tests.Access;

/// <summary>What the workshop's console tells of tries to get in.</summary>
public sealed class RefusedPairingTests
{
    [Fact]
    public async Task Wrong_code_is_told_with_the_address_it_came_from_and_not_what_was_typed()
    {
        await using var app = await LanApp.StartAsync();
        using var told = new ToldLines();
        app.Logging.AddProvider(told);
        await app.OfferAsync();

        var answer = await LanApp.SendAsync(app.NewPhone(from: "127.0.0.7"), "/pair", ("code", "12345678"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var line = Assert.Single(told.Lines, line => line.Contains("Pairing refused", StringComparison.Ordinal));
        Assert.Contains("127.0.0.7", line, StringComparison.Ordinal);
        Assert.DoesNotContain("12345678", line, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pairing_that_succeeds_is_no_warning()
    {
        await using var app = await LanApp.StartAsync();
        using var told = new ToldLines();
        app.Logging.AddProvider(told);

        await app.PairAsync();

        Assert.DoesNotContain(told.Lines, line => line.Contains("Pairing", StringComparison.Ordinal));
    }

    private sealed class ToldLines : ILoggerProvider, ILogger
    {
        public ConcurrentQueue<string> Lines { get; } = [];

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Lines.Enqueue(formatter(state, exception));

        public void Dispose()
        {
            // Holds nothing.
        }
    }
}
