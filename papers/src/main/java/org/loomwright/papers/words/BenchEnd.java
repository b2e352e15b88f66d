package org.loomwright.papers.words;

import java.util.Optional;

/**
 * How the bench makes one end of a lead.
 *
 * @param part terminal, ring, splice or cap, by part number
 * @param name its name
 * @param stripMm strip length, empty where the bench does not strip
 * @param tool crimp tool or die, empty where none is used
 * @param crimpHeightMm conductor crimp height, where the maker of the terminal gives one
 * @param seal wire seal, by part number
 * @param goesTo where it goes, in words
 */
public record BenchEnd(
    String part,
    String name,
    Optional<Double> stripMm,
    Optional<String> tool,
    Optional<Double> crimpHeightMm,
    Optional<String> seal,
    String goesTo) {}
