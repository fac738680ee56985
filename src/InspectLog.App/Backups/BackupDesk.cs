using InspectLog.Journal;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Backups;

/// <summary>Backups of the garage that is open: asked for by a page or made by night, one at a time and in the background. Safe
/// for use by many threads.</summary>
public sealed class BackupDesk : IDisposable, IProgress<BackupProgress>
{
    private readonly Garage _garage;
    private readonly TimeProvider _time;
    private readonly CancellationTokenSource _stop = new();
    private readonly Lock _gate = new();
    private Task _work = Task.CompletedTask;
    private BackupProgress? _progress;

    public BackupDesk(Garage garage, TimeProvider time)
    {
        (_garage, _time) = (garage, time);
        Record = new(garage.Folder);
    }

    /// <summary>What is wanted of backups, and how the last went.</summary>
    public BackupRecord Record { get; }

    /// <summary>How far the one is that is being made; null where none is.</summary>
    public BackupProgress? Progress
    {
        get
        {
            lock (_gate)
            {
                return _progress;
            }
        }
    }

    /// <summary>Begins a backup where none is under way.</summary>
    /// <param name="to">The folder it goes to.</param>
    /// <param name="isUnattended">Whether nobody looks on: then none is begun where one was before and is not any more, since the
    /// disk it is on may not be plugged in, and a folder of its name would be made elsewhere.</param>
    /// <returns>The work on it.</returns>
    public Task Begin(string to, bool isUnattended = false)
    {
        lock (_gate)
        {
            if (_progress is null)
            {
                _progress = new(0, 0);
                _work = Task.Run(() => Make(to, isUnattended), CancellationToken.None);
            }

            return _work;
        }
    }

    /// <inheritdoc/>
    void IProgress<BackupProgress>.Report(BackupProgress value)
    {
        lock (_gate)
        {
            _progress = value;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        _work.ContinueWith(_ => { }, TaskScheduler.Default).Wait(TimeSpan.FromSeconds(10));
        _stop.Dispose();
    }

    private void Make(string to, bool isUnattended)
    {
        try
        {
            if (isUnattended && Record.Last.To == Path.GetFullPath(to) && !Backup.IsIn(to))
            {
                throw new BackupRefusedException($"The backup that was in {to} is not there any more. Plug its disk in; where it is gone for good, press “Back up now” on the page of the backups.");
            }

            Record.Completed(new Backup(_garage.Folder, to, _time, ProgramName.WithVersion).Run(progress: this, stop: _stop.Token), to);
        }
        catch (OperationCanceledException)
        {
            Note("The program was stopped before it was done. It goes on with the next one.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or BackupRefusedException)
        {
            Note(problem.Message);
        }
        catch (Exception unforeseen)
        {
            Note($"Something went wrong in the program: {unforeseen.Message}");
        }
        finally
        {
            lock (_gate)
            {
                _progress = null;
            }
        }
    }

    private void Note(string failure)
    {
        try
        {
            Record.Failed(failure);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nothing can be written to the data folder: the garage says so itself.
        }
    }
}
