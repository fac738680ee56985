using InspectLog.App.Listening;
using Microsoft.Extensions.DependencyInjection;

namespace InspectLog.App.Tests.Listening;

/// <summary>What wakes the transcription worker.</summary>
public sealed class TranscriptionSignalTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Said_twice_before_it_is_heard_wakes_once()
    {
        var signal = new TranscriptionSignal();
        signal.Raise();
        signal.Raise();

        await signal.WaitAsync(Stop);

        using var given = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var second = signal.WaitAsync(given.Token);
        Assert.False(second.IsCompleted);
        signal.Raise();
        await second;
    }

    [Fact]
    public async Task Worker_that_comes_to_wait_after_the_program_ended_is_cancelled_and_nothing_worse()
    {
        await using var services = new ServiceCollection().AddSingleton<TranscriptionSignal>().BuildServiceProvider();
        var signal = services.GetRequiredService<TranscriptionSignal>();
        await services.DisposeAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => signal.WaitAsync(new CancellationToken(canceled: true)));
    }
}
