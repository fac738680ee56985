using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>One verb of the command line.</summary>
internal abstract class Verb : Command
{
    protected Verb(string name, string description, Surroundings surroundings)
        : base(name, description)
    {
        Surroundings = surroundings;
        SetAction(RunAsync);
    }

    /// <summary>Command lines a newcomer can copy, shown by the help.</summary>
    public abstract IReadOnlyList<string> Examples { get; }

    /// <summary>How long it may go on after it was told to stop, before the process ends all the same; null where it
    /// takes no signals.</summary>
    public virtual TimeSpan? TimeToStop => TimeSpan.FromSeconds(2);

    protected Surroundings Surroundings { get; }

    /// <summary>Does the work and gives the exit code.</summary>
    protected abstract Task<int> RunAsync(ParseResult arguments, CancellationToken stop);
}
