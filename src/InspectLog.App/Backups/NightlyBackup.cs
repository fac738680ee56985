namespace InspectLog.App.Backups;

/// <summary>Makes a backup each night, where that is wanted; where the computer was off at night, when it is on again.</summary>
public sealed class NightlyBackup(BackupDesk desk, TimeProvider time) : BackgroundService
{
    /// <summary>The hour of the night, in the time here.</summary>
    public const int Hour = 2;

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMinutes(5);

    /// <summary>Whether one is due: the hour of a night has come since the last try. Pure.</summary>
    /// <param name="last">When one was last made or tried; null where that never was.</param>
    /// <param name="now">The time here.</param>
    public static bool IsDue(DateTimeOffset? last, DateTimeOffset now)
    {
        var night = new DateTimeOffset(now.Date, now.Offset).AddHours(Hour);
        var latest = night <= now ? night : night.AddDays(-1);
        return last is not { } made || made < latest;
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(BetweenLooks, time);
        try
        {
            do
            {
                await LookAsync(stoppingToken);
            }
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The program is ending.
        }
    }

    private async Task LookAsync(CancellationToken stop)
    {
        var (settings, last, now) = (desk.Record.Settings, desk.Record.Last, time.GetLocalNow());
        if (settings is not { Nightly: true, Folder: { } folder } || !IsDue(Newer(last.Done, last.Tried), now))
        {
            return;
        }

        try
        {
            // Noted first: one that fails is told, and tried again the next night and not every five minutes.
            desk.Record.Tried(now);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return; // nothing can be written here, which the garage says itself
        }

        await desk.Begin(folder, isUnattended: true).WaitAsync(stop);
    }

    private static DateTimeOffset? Newer(DateTimeOffset? one, DateTimeOffset? other) => one > other || other is null ? one : other;
}
