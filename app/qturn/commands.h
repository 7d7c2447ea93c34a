#pragma once
// The families of commands, each in a file of its own.

namespace quarterturn {

class CommandSet;

// Parses, runs and prints one command line; answers the exit code.
int run_line(int argc, char** argv);

// All of them, in the order of the job.
void add_all_commands(CommandSet& commands);

void add_library_commands(CommandSet& commands);  // init, rebuild-cache, settings, version
void add_scenario_command(CommandSet& commands);
void add_client_commands(CommandSet& commands);
void add_client_export_command(CommandSet& commands);
void add_erase_commands(CommandSet& commands);
void add_wedding_commands(CommandSet& commands);
void add_sitting_commands(CommandSet& commands);
void add_look_commands(CommandSet& commands);
void add_look_erase_command(CommandSet& commands);
void add_recipe_commands(CommandSet& commands);        // show, set, from, revisions
void add_recipe_check_commands(CommandSet& commands);  // check, rules, diff
void add_recipe_word_commands(CommandSet& commands);   // step, complete, templates
void add_kit_command(CommandSet& commands);
void add_running_order_command(CommandSet& commands);
void add_board_command(CommandSet& commands);
void add_take_down_command(CommandSet& commands);
void add_timer_commands(CommandSet& commands);    // start, list, stop
void add_as_made_commands(CommandSet& commands);  // day-photos, as-made, head-points
void add_import_command(CommandSet& commands);
void add_photos_command(CommandSet& commands);
void add_find_command(CommandSet& commands);
void add_place_commands(CommandSet& commands);     // sort, place
void add_clock_commands(CommandSet& commands);     // clock, devices
void add_tag_commands(CommandSet& commands);       // tag, confirm, accept
void add_bin_commands(CommandSet& commands);       // bin list, add, take-out, empty
void add_history_commands(CommandSet& commands);   // undo, redo
void add_check_commands(CommandSet& commands);     // check, bursts
void add_coverage_commands(CommandSet& commands);  // coverage, waive
void add_shot_list_commands(CommandSet& commands);
void add_sign_off_commands(CommandSet& commands);  // sign-off, reopen, export-record
void add_sheet_command(CommandSet& commands);
void add_pair_commands(CommandSet& commands);         // list, count, keep, filters, forget
void add_pair_choice_commands(CommandSet& commands);  // show, choose, pin, refuse, facts
void add_pair_like_commands(CommandSet& commands);    // measure, like
void add_pair_picture_command(CommandSet& commands);
void add_pair_progress_command(CommandSet& commands);
void add_inspiration_commands(CommandSet& commands);
void add_consent_commands(CommandSet& commands);        // show, grant, decline, withdraw, history
void add_consent_paper_commands(CommandSet& commands);  // attach, form
void add_photo_commands(CommandSet& commands);          // photo whose, photo people
void add_hair_only_command(CommandSet& commands);       // photo hair-only
void add_may_command(CommandSet& commands);
void add_portfolio_commands(CommandSet& commands);  // export
void add_selection_commands(CommandSet& commands);  // candidates, select, selections
void add_gallery_command(CommandSet& commands);     // portfolio gallery
void add_ledger_commands(CommandSet& commands);     // list, tasks, place, taken-down
void add_backup_commands(CommandSet& commands);     // backup, backups
void add_verify_command(CommandSet& commands);
void add_restore_command(CommandSet& commands);
void add_safe_to_delete_command(CommandSet& commands);
void add_lock_commands(CommandSet& commands);  // set, change, recovery-key, remove, status
void add_help_report_command(CommandSet& commands);
void add_completion_command(CommandSet& commands);

}  // namespace quarterturn
