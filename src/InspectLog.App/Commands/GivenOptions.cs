using System.CommandLine;
using InspectLog.Archives.Making;
using InspectLog.Journal;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>What the verbs share that give something of a vehicle to somebody.</summary>
internal static class GivenOptions
{
    /// <summary>By which profile it is given.</summary>
    /// <param name="what">"What of it is given".</param>
    public static Option<string> Profile(string what)
    {
        string[] known = [.. ArchiveProfiles.All.Select(profile => profile.Id)];
        var option = new Option<string>("--profile")
        {
            Description = $"{what}: {string.Join(" or ", known)}.",
            DefaultValueFactory = _ => ArchiveProfiles.Everything.Id,
        };
        option.AcceptOnlyFromAmong(known);
        return option;
    }

    /// <summary>A vehicle's record.</summary>
    /// <exception cref="CommandException">There is no such vehicle; the message names those there are.</exception>
    public static VehicleReading Reading(string folder, string vehicle)
    {
        try
        {
            return VehicleReading.Of(folder, vehicle);
        }
        catch (UnknownVehicleException)
        {
            var known = VehicleReading.VehiclesIn(folder);
            throw CommandException.BadInput(known.Count == 0
                ? $"There is no vehicle in {folder}. Name the data folder with --data FOLDER."
                : $"There is no vehicle \"{vehicle}\" in {folder}. Those there are: {string.Join(", ", known)}.");
        }
    }
}
