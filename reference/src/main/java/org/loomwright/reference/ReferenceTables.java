package org.loomwright.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Published tables for use in tests. Each carries its sources and cautions. */
public final class ReferenceTables {
  private ReferenceTables() {}

  /** Solid copper by gauge, 4/0 to 6 AWG: dia_mil, dia_mm, cmil, ohm_per_1000ft. */
  public static ReferenceTable awgSolidLarge() {
    return table("awg_solid_large");
  }

  /** Solid copper by gauge, 8 to 30 AWG, from memory: dia_in, ohm_per_1000ft_20C. */
  public static ReferenceTable awgSolidSmall() {
    return table("awg_nbs_handbook100_small");
  }

  /** Rounded gauge table, 7 % tolerance: dia_mm, area_mm2, ohm_per_km. */
  public static ReferenceTable awgRounded() {
    return table("awg_rounded_mm");
  }

  /** Stranded gauges: stranding, strand_dia_in, approx_od_in, cmil, ohm_per_1000ft. */
  public static ReferenceTable awgStranded() {
    return table("stranded_awg_construction");
  }

  /** Copper constants: name, value, unit, seen, source. */
  public static ReferenceTable copperConstants() {
    return table("copper_constants");
  }

  /** Metric automotive cable, from memory. */
  public static ReferenceTable metricThinWall() {
    return table("iso6722_thin_wall_memory");
  }

  /** Metric automotive cable as one maker lists it: nominal_current_A, od_max_mm. */
  public static ReferenceTable metricThinWallCatalogue() {
    return table("thinwall_auto_cable");
  }

  /** IEC 60228 largest resistance, ohm/km at 20 °C. */
  public static ReferenceTable iec60228Resistance() {
    return table("iec60228_conductor_resistance");
  }

  /** IEC 60228 temperature correction: t_C, kt. */
  public static ReferenceTable iec60228TemperatureCorrection() {
    return table("iec60228_temperature_correction_kt");
  }

  /** 33 CFR 183.425 Table 5: awg, t60C_A to t200C_A. */
  public static ReferenceTable cfrAmpacity() {
    return table("cfr_33_183_425_table5_ampacity");
  }

  /** 33 CFR 183.425 notes: factor_kind, key, factor, seen. */
  public static ReferenceTable cfrNotes() {
    return table("cfr_33_183_425_notes_factors");
  }

  /** MIL-W-5088L bundle curves: wires, load20pct to load100pct. */
  public static ReferenceTable bundleCurves() {
    return table("mil_w_5088l_bundle_derating");
  }

  /** Readings of its own curves by AC 43.13-1B: curve, key, factor, seen. */
  public static ReferenceTable faaCurveReadings() {
    return table("faa_ac4313_derating_points");
  }

  /** Voltage drop examples of AC 43.13-1B. */
  public static ReferenceTable faaVoltageDrop() {
    return table("faa_ac4313_voltage_drop_examples");
  }

  /** Gauge for 3 % drop at 12 V by current and round-trip length. */
  public static ReferenceTable marineThreePercent() {
    return table("marine_3pct_12V_table");
  }

  /** k factors by insulation: t_initial_C, t_final_C, k_copper. */
  public static ReferenceTable adiabaticK() {
    return table("adiabatic_k_factors");
  }

  /** Vehicle fuses: type, rating_A_range, percent, t_min_s, t_max_s, seen. */
  public static ReferenceTable fuseTimes() {
    return table("fuse_time_limits");
  }

  /** Single wire in vacuum, radiation only: awg, I_sw_A. */
  public static ReferenceTable ecssSingleWire() {
    return table("ecss_single_wire_rating");
  }

  /** Smallest circle round N equal circles: n, ratio_R_over_r. */
  public static ReferenceTable equalCircles() {
    return table("circle_packing_equal");
  }

  /** Smallest circle round circles of radii 1, 2 to n: n, R. */
  public static ReferenceTable unequalCircles() {
    return table("circle_packing_unequal");
  }

  /** One best known packing of circles of radii 1 to 5: radius, x_unit, y_unit. */
  public static ReferenceTable fiveUnequalCircles() {
    return table("circle_packing_unequal_5_coords");
  }

  /** Worked example of cutting stock, 5600 mm, optimum 73: width_mm, demand. */
  public static ReferenceTable cuttingExample() {
    return table("cutting_stock_example");
  }

  /** Bin packing with 120 items: instance, capacity, optimum_bins, l1_bound, items. */
  public static ReferenceTable cuttingInstances() {
    return table("cutting_stock_u120");
  }

  /** SAE J1128 outside diameters, partly from memory: awg, txl_od_mm, gxl_od_mm, sxl_od_mm. */
  public static ReferenceTable saeOutsideDiameters() {
    return table("sae_j1128_txl_gxl_sxl_od_memory");
  }

  /** AWG and SAE gauge areas side by side: gauge, awg_cmil, sae_cmil. */
  public static ReferenceTable saeAreas() {
    return table("awg_vs_sae_circular_mils");
  }

  /** SAE J1128 GXL data sheet: awg, stranding, od_mm, lb_per_1000ft. */
  public static ReferenceTable saeGxl() {
    return table("sae_j1128_gxl");
  }

  /** ISO 6722-1 classes: class, t_min_C, t_max_C, seen. */
  public static ReferenceTable insulationClasses() {
    return table("iso6722_temperature_classes");
  }

  /** AC 43.13-1B Table 11-9: awg, amps_105C to amps_200C, max_ohm_per_1000ft_20C, nominal_cmil. */
  public static ReferenceTable faaCopper() {
    return table("faa_ac4313_table11_9_copper");
  }

  /** AC 43.13-1B example no. 2 step by step: id, printed, digits, seen. */
  public static ReferenceTable faaWorkedExamples() {
    return table("faa_ac4313_worked_examples");
  }

  /** Largest continuous current of a fuse by ambient: type, rating_A, ambient_C, max_A. */
  public static ReferenceTable fuseRerating() {
    return table("fuse_temperature_rerating");
  }

  /** Melting of copper by Onderdonk: id, cmil, time_s, ambient_C, melting_C, current_A. */
  public static ReferenceTable fusingCurrent() {
    return table("fusing_current");
  }

  /** Most current of heavy-duty contacts by their size, from memory: contact, max_A. */
  public static ReferenceTable contactCurrents() {
    return table("contact_current_ratings_memory");
  }

  /** Wires that terminals take: terminal, size, awg_range, mm2_range, seen. */
  public static ReferenceTable terminalWireRanges() {
    return table("terminal_wire_ranges");
  }

  /** Constants of the closed form of k: metal, heat_capacity_J_per_K_mm3, b_C, rho20_ohm_mm. */
  public static ReferenceTable adiabaticFormula() {
    return table("adiabatic_formula");
  }

  /** Colours of blade fuses, from memory: family, rating_A, colour. */
  public static ReferenceTable bladeFuseColours() {
    return table("blade_fuse_colours");
  }

  /** DIN 72552 designations: terminal, meaning, seen. */
  public static ReferenceTable terminalDesignations() {
    return table("din72552_terminals");
  }

  /** Run length at temperature of AC 43.13-1B: metal, numerator_C, offset_C. */
  public static ReferenceTable faaRunLength() {
    return table("faa_ac4313_formulas");
  }

  /** AC 43.13-1B Table 11-6, from memory: nominal_V, continuous_drop_V, intermittent_drop_V. */
  public static ReferenceTable faaAllowedDrop() {
    return table("faa_ac4313_table11_6_voltage_drop");
  }

  /** Data sheet points of fuses: type, rating_A, cold_resistance_mohm, typ_drop_mV, i2t_A2s. */
  public static ReferenceTable fusePoints() {
    return table("fuse_electrical_points");
  }

  /** Rules for fuses: rule, low, high, unit, seen, source. */
  public static ReferenceTable fuseRules() {
    return table("fuse_rules");
  }

  /** Rating of a bundle in vacuum: awg, wires, ambient_C, rating_C, rated_A. */
  public static ReferenceTable vacuumBundle() {
    return table("hst_bundle_facts");
  }

  /** IEC 60757 letter codes: colour, code, order. */
  public static ReferenceTable colourCodes() {
    return table("iec60757_colours");
  }

  /** Marine worked example of a gauge: drop_pct, volts, amps, length_ft_round_trip, table_awg. */
  public static ReferenceTable marineExamples() {
    return table("marine_voltage_drop_examples");
  }

  /** Cable sold by its outside size: auto_size_mm, stranding, area_mm2, amp_rating_A. */
  public static ReferenceTable autoCable() {
    return table("old_auto_cable");
  }

  /** Wait before work on restraint systems, by vehicle maker: maker, wait_s. */
  public static ReferenceTable restraintWaits() {
    return table("srs_wait_times");
  }

  /** Wire ranges of tab terminals, from memory: tab_mm, least_mm2, most_mm2. */
  public static ReferenceTable tabTerminals() {
    return table("tab_terminal_wire_ranges");
  }

  /** ISO 11446 trailer socket: contact, function, recommended_mm2. */
  public static ReferenceTable trailerSocket() {
    return table("trailer_socket_iso11446");
  }

  /** Small sections of DIN VDE 0295: area_mm2, plain_ohm_km, tinned_ohm_km. */
  public static ReferenceTable smallSections() {
    return table("vde0295_small_conductor_resistance");
  }

  /** Limits for workmanship: rule, value, unit, seen, source. */
  public static ReferenceTable workmanship() {
    return table("workmanship_rules");
  }

  /**
   * A table by the name of its file without ending.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public static ReferenceTable table(String name) {
    try (InputStream in = ReferenceTables.class.getResourceAsStream(name + ".csv")) {
      if (in == null) {
        throw new IllegalArgumentException("no reference table \"" + name + "\"");
      }
      return CsvReader.read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("reference table \"" + name + "\" cannot be read", e);
    }
  }
}
