package org.loomwright.planner.proof;

import java.util.List;
import java.util.stream.Collectors;

/** No net with two feeds, no feed tied to ground, no parked end live, every feed behind a fuse. */
final class BackFeed implements NetCheck {
  @Override
  public void check(NetAt at, Findings findings) {
    if (!at.net().hasLeads()) {
      return;
    }
    List<Source> feeds = at.sources(Source.Kind.FEED);
    String leads =
        at.net().leads().stream().map(lead -> lead.id()).collect(Collectors.joining(", "));
    at.require(
        feeds.size() < 2,
        Claim.NO_BACK_FEED,
        findings,
        "lead "
            + leads
            + " ties "
            + feeds.size()
            + " feeds together: "
            + feeds.stream().map(Source::words).collect(Collectors.joining(", ")));
    at.require(
        feeds.isEmpty() || at.sources(Source.Kind.GROUND).isEmpty(),
        Claim.NO_BACK_FEED,
        findings,
        "lead " + leads + " ties a feed to ground");
    at.require(
        !at.net().hasRing(),
        Claim.NO_BACK_FEED,
        findings,
        "lead " + leads + " closes a ring, in which current takes two ways");
    for (Source feed : feeds) {
      for (String node : at.net().nodes()) {
        if (node.startsWith(Nodes.PARKED)) {
          at.fail(
              Claim.NO_BACK_FEED,
              findings,
              "the parked end "
                  + node.substring(node.lastIndexOf(' ') + 1)
                  + " of lead "
                  + node.substring(Nodes.PARKED.length(), node.lastIndexOf(' '))
                  + " is live from "
                  + feed.words());
        }
      }
      at.require(
          feed.fuseA().isPresent(),
          Claim.NO_BACK_FEED,
          findings,
          "lead " + leads + " is fed from " + feed.words() + " without a known fuse");
    }
  }
}
