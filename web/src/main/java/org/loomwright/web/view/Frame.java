package org.loomwright.web.view;

import java.util.Optional;
import org.loomwright.model.quantity.Display;

/**
 * What surrounds every page.
 *
 * @param title what the page is about
 * @param look "auto", "light" or "dark"
 * @param units units lengths and wire sizes are shown in
 * @param here address of the page, to come back to
 * @param where what the pages show, in words
 * @param sought words in the search box
 * @param canChange whether pages can change the documents
 * @param who name the person signed with last; empty when they have not
 * @param why what the person just wrote a change is for; empty when nothing was refused
 * @param notice what was just done
 * @param tour number of the stop of the tour, from 1
 */
public record Frame(
    String title,
    String look,
    Display units,
    String here,
    String where,
    String sought,
    boolean canChange,
    String who,
    String why,
    Optional<Notice> notice,
    Optional<Integer> tour) {}
