using System.CommandLine;
using System.Globalization;
using InspectLog.Inspecting.Words;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that say which instrument it was, and how long its calibration is good.</summary>
internal sealed class PapersOptions
{
    private const string DayForm = "yyyy-MM-dd";

    private readonly Option<string> _serial = new("--serial")
    {
        Description = "The instrument's serial number, repeated in the answer.",
        HelpName = "NUMBER",
    };

    private readonly Option<string> _due = Day("--due", "The day its calibration is due. An instrument that was overdue is said in the answer.");
    private readonly Option<string> _on = Day("--read-on", "The day it was read, for --due. Without it: today.");

    public IReadOnlyList<Option> All => [_serial, _due, _on];

    /// <summary>The papers given.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="today">The day where none is given.</param>
    /// <exception cref="CommandException">A day is none, or is given for nothing.</exception>
    public Papers Read(ParseResult arguments, DateOnly today)
    {
        var due = Read(arguments, _due);
        var on = Read(arguments, _on);
        if (on is not null && due is null)
            throw CommandException.BadInput("--read-on goes with --due.");
        return new(arguments.GetValue(_serial)?.Trim(), due, on ?? today);
    }

    private static DateOnly? Read(ParseResult arguments, Option<string> option) =>
        arguments.GetValue(option) is not { } text ? null
        : DateOnly.TryParseExact(text, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
        : throw CommandException.BadInput($"{option.Name} is a day such as 2026-03-31: year, month, day.");

    private static Option<string> Day(string name, string description) => new(name) { Description = description, HelpName = "YYYY-MM-DD" };
}

/// <summary>What is said of the instrument of a reading.</summary>
/// <param name="SerialNumber">Its serial number; null where none is given.</param>
/// <param name="Due">The day its calibration is due; null where none is given.</param>
/// <param name="ReadOn">The day it was read.</param>
internal sealed record Papers(string? SerialNumber, DateOnly? Due, DateOnly ReadOn)
{
    private Instrument Instrument => new("given", "given", QuantityKind.Length, new(0, 0), 1) { SerialNumber = SerialNumber, Due = Due };

    /// <summary>Whether its calibration had run out; null where that cannot be said.</summary>
    public bool? IsOverdue => Due is null ? null : Instrument.IsOverdue(ReadOn);

    /// <summary>In a line of the answer; empty where nothing is given.</summary>
    public string Words => InstrumentWords.Overdue(Instrument, ReadOn) is { } overdue
        ? $"{InstrumentWords.Papers(Instrument with { Due = null })} {overdue}".TrimStart()
        : InstrumentWords.Papers(Instrument);
}
