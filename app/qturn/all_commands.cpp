#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"

namespace quarterturn {

void add_all_commands(CommandSet& commands) {
    add_library_commands(commands);
    add_scenario_command(commands);
    add_client_commands(commands);
    add_client_export_command(commands);
    add_erase_commands(commands);
    add_wedding_commands(commands);
    add_sitting_commands(commands);
    add_look_commands(commands);
    add_look_erase_command(commands);
    add_recipe_commands(commands);
    add_recipe_check_commands(commands);
    add_recipe_word_commands(commands);
    add_kit_command(commands);
    add_running_order_command(commands);
    add_board_command(commands);
    add_take_down_command(commands);
    add_timer_commands(commands);
    add_as_made_commands(commands);
    add_import_command(commands);
    add_photos_command(commands);
    add_find_command(commands);
    add_place_commands(commands);
    add_clock_commands(commands);
    add_tag_commands(commands);
    add_bin_commands(commands);
    add_history_commands(commands);
    add_check_commands(commands);
    add_coverage_commands(commands);
    add_shot_list_commands(commands);
    add_sign_off_commands(commands);
    add_sheet_command(commands);
    add_pair_commands(commands);
    add_pair_choice_commands(commands);
    add_pair_like_commands(commands);
    add_pair_picture_command(commands);
    add_pair_progress_command(commands);
    add_inspiration_commands(commands);
    add_consent_commands(commands);
    add_consent_paper_commands(commands);
    add_photo_commands(commands);
    add_hair_only_command(commands);
    add_may_command(commands);
    add_portfolio_commands(commands);
    add_selection_commands(commands);
    add_gallery_command(commands);
    add_ledger_commands(commands);
    add_backup_commands(commands);
    add_verify_command(commands);
    add_restore_command(commands);
    add_safe_to_delete_command(commands);
    add_lock_commands(commands);
    add_help_report_command(commands);
    add_completion_command(commands);
}

}  // namespace quarterturn
