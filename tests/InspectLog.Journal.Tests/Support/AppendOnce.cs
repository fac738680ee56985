namespace InspectLog.Journal.Tests.Support;

/// <summary>A process that appends twice to the first vehicle of a folder and says how it went.</summary>
internal static class AppendOnce
{
    public static int Run(string folder)
    {
        using var garage = Garage.Open(folder, TimeProvider.System);
        for (var n = 0; n < 2; n++)
        {
            try
            {
                Console.WriteLine($"kept {garage.Note(garage.Vehicles()[0].Id, "said by another process").NextSequence - 1}");
            }
            catch (JournalReadOnlyException refusal)
            {
                Console.WriteLine($"refused: {refusal.Message}");
            }
        }

        Console.WriteLine($"problems: {garage.Problems.Count(problem => problem.ReadOnly)}");
        return 0;
    }
}
