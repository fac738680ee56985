using InspectLog.App.Tests.Bench;
using InspectLog.Doubts;
using InspectLog.Inspecting;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.HandsFree;

/// <content>A conversation as the journal has it.</content>
public sealed partial class ObeyingTests
{
    /// <summary>An inspection in which somebody speaks.</summary>
    private sealed class Talk
    {
        private static readonly MediaFile Sound = new(new string('a', 64), 32044, "audio/wav");

        private readonly List<EntryBody> _entries = [];

        public IReadOnlyList<EntryBody> Entries => _entries;

        public BenchScene Scene => Written.Scene([.. _entries]);

        public InspectionState Inspection => Scene.Inspection;

        public void Add(params EntryBody[] entries) => _entries.AddRange(entries);

        /// <summary>Keeps an utterance that is not read yet; gives its sequence.</summary>
        public long Keep(string? openCheck = null)
        {
            var sequence = Scene.Vehicle.NextSequence;
            Add(new UtteranceKept(Written.Inspection, Sound, 1, openCheck));
            return sequence;
        }

        public void Read(long recording, params ProposedFinding[] findings) =>
            Add(new TranscriptMade(recording, "as said", [], true, "", ""), new FindingsProposed(recording, findings));

        public long Say(params ProposedFinding[] findings)
        {
            var recording = Keep();
            Read(recording, findings);
            return recording;
        }

        public long Speak(SpokenCommand command, Doubt? doubt = null, string? openCheck = null)
        {
            var recording = Keep(openCheck);
            Read(recording);
            Add(new CommandHeard(recording, command, doubt));
            return recording;
        }

        public CommandDone Obey(long recording)
        {
            var now = Scene;
            var made = Obeying.Bodies(now, WorkshopState.Empty, now.Inspection.FindVoiceNote(recording)!);
            Add([.. made]);
            return (CommandDone)made[^1];
        }

        public CommandDone Command(SpokenCommand command, string? openCheck = null) => Obey(Speak(command, null, openCheck));
    }
}
