/** What the columns of lateness at controls mean. */
export function HowLostIsReckoned() {
  return (
    <p>
      Late is what the list says, against the due time it has. Lost on the way is what the car took from the
      control before beyond the itinerary’s target time, so who left service late is not blamed for it again.
      What is lost adds up, services too, until a regroup or a new leg; time made up takes nothing off it. In
      brackets is where the true share lies 19 times in 20, if cars are late by themselves.
    </p>
  );
}
