using System.CommandLine;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Commands;

/// <summary>What a verified journal can be held against besides the seals beside it.</summary>
internal sealed class SealOptions
{
    private readonly Option<string?> _key = new("--key")
    {
        Description = "The fingerprint of the key you trust, from a printed report: at least its first 32 digits. Seals by other keys do not count then.",
        HelpName = "FINGERPRINT",
    };

    private readonly Option<string?> _seal = new("--seal")
    {
        Description = "A seal you kept elsewhere: says whether a journal here is the one it is of, to its last entry.",
        HelpName = "FILE",
    };

    private readonly Option<string?> _page = new("--page")
    {
        Description = "The text of the QR code on a printed report: says whether a journal here is the one of that report.",
        HelpName = "TEXT",
    };

    public void AddTo(Command verb)
    {
        _key.Validators.Add(given =>
        {
            if (KeyFingerprint.Read(given.GetValueOrDefault<string?>() ?? "") is null)
                given.AddError($"--key is the fingerprint of a key as a report prints it: at least {KeyFingerprint.ShortDigits} digits and letters from a to f. Blanks do not matter.");
        });
        _page.Validators.Add(given =>
        {
            if (PrintedSeal.Read(given.GetValueOrDefault<string?>() ?? "") is null)
                given.AddError("--page is the whole text of the QR code on a report: it begins with INSPECTLOG SEAL.");
        });
        verb.Add(_key);
        verb.Add(_seal);
        verb.Add(_page);
    }

    /// <summary>The fingerprint that is trusted; null where none was given.</summary>
    public string? Key(ParseResult arguments) => arguments.GetValue(_key) is { } typed ? KeyFingerprint.Read(typed) : null;

    /// <summary>Holds journals against what was given and says what came out.</summary>
    /// <returns>Whether they are what it says; true where nothing was given.</returns>
    public bool Hold(ParseResult arguments, IReadOnlyList<HeldJournal> journals, TextWriter output)
    {
        var isTrusted = Key(arguments) is not { } key || journals.Where(journal => !journal.IsWorkshops).All(journal => !journal.SealFaults(key).Any());
        var isSealed = arguments.GetValue(_seal) is not { } file || HoldSeal(file, Key(arguments), journals, output);
        var isPrinted = arguments.GetValue(_page) is not { } text || HoldPage(PrintedSeal.Read(text)!, journals, output);
        return isTrusted && isSealed && isPrinted;
    }

    private static bool HoldSeal(string file, string? key, IReadOnlyList<HeldJournal> journals, TextWriter output)
    {
        var signed = Read(file);
        if (key is not null && !KeyFingerprint.Is(signed.Key, key))
        {
            output.WriteLine($"{file}: NOT THE KEY. This seal was made with the key {KeyFingerprint.Printed(signed.Key)}.");
            return false;
        }

        if (journals.Count == 0)
            return NothingToHold(output);

        var (journal, found) = Closest(journals, chain => SealComparison.Of(signed.Seal, chain), signed.Seal.Vehicle);
        output.WriteLine(found.Stands
            ? $"{file}: {journal.Name} is the journal of this seal, {SealWords.Line(new(new(file) { Sound = signed }, found))}{Since(found)}"
            : $"{file}: NOT KEPT. {SealWords.Broken(signed.Seal, found)}");
        return found is { Stands: true, WithheldSince.Count: 0 };
    }

    private static bool HoldPage(PrintedSeal printed, IReadOnlyList<HeldJournal> journals, TextWriter output)
    {
        if (journals.Count == 0)
            return NothingToHold(output);

        var (journal, found) = Closest(journals, printed.Compare, printed.Vehicle);
        output.WriteLine(found.Standing switch
        {
            _ when found.Stands => $"The page: {journal.Name} is its journal, with {found.Later} later entries{Since(found)}",
            SealStanding.Cut => $"The page: NOT KEPT. It is of {printed.Count} entries, and no journal here has so many: it was cut, or this is another vehicle.",
            SealStanding.Unknown => "The page: NOT KNOWN. The journal is damaged, and the entry that was printed cannot be compared.",
            _ => $"The page: NOT KEPT. The first {printed.Count} entries are not the ones of the page: something was changed or withheld since, or this is another vehicle.",
        });
        return found is { Stands: true, WithheldSince.Count: 0 };
    }

    /// <summary>The journal that is the one meant, or the one whose folder has the vehicle's name, or any.</summary>
    private static (HeldJournal Journal, SealComparison Found) Closest(IReadOnlyList<HeldJournal> journals, Func<JournalChain, SealComparison> compare, string vehicle) => journals
        .Select(journal => (Journal: journal, Found: compare(journal.Chain)))
        .OrderByDescending(one => one.Found.Stands)
        .ThenByDescending(one => one.Journal.VehicleId == vehicle)
        .ThenBy(one => one.Journal.IsWorkshops)
        .First();

    private static bool NothingToHold(TextWriter output)
    {
        output.WriteLine("NOT KEPT. There is no journal here that can be read.");
        return false;
    }

    private static string Since(SealComparison found) =>
        found.WithheldSince.Count == 0 ? "." : $". WITHHELD SINCE: {SealWords.Numbers(found.WithheldSince)}";

    private static SignedSeal Read(string file)
    {
        try
        {
            return File.Exists(file) ? SignedSeal.Read(File.ReadAllText(file)) : throw CommandException.BadInput($"There is no file {file}.");
        }
        catch (FormatException problem)
        {
            throw CommandException.BadInput($"{file} is no seal: {problem.Message}.");
        }
    }
}
