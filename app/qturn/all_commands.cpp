#include <algorithm>
#include <string_view>
#include <vector>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"

namespace quarterturn {
namespace {

// Commands of one file, and the words with which a line for them begins.
struct Family {
    std::vector<std::string_view> words;
    void (*add)(CommandSet& commands);

    bool answers_to(std::string_view word) const {
        return std::ranges::find(words, word) != words.end();
    }
};

const std::vector<Family>& families() {
    static const std::vector<Family> all{
        {{"init", "rebuild-cache", "settings", "version"}, add_library_commands},
        {{"scenario"}, add_scenario_command},
        {{"client"}, add_client_commands},
        {{"client"}, add_client_export_command},
        {{"client"}, add_erase_commands},
        {{"wedding"}, add_wedding_commands},
        {{"sitting"}, add_sitting_commands},
        {{"look"}, add_look_commands},
        {{"look"}, add_look_erase_command},
        {{"recipe"}, add_recipe_commands},
        {{"recipe"}, add_recipe_check_commands},
        {{"recipe"}, add_recipe_word_commands},
        {{"kit"}, add_kit_command},
        {{"running-order"}, add_running_order_command},
        {{"board"}, add_board_command},
        {{"take-down"}, add_take_down_command},
        {{"timer"}, add_timer_commands},
        {{"day-photos", "as-made", "head-points"}, add_as_made_commands},
        {{"import"}, add_import_command},
        {{"photos"}, add_photos_command},
        {{"find"}, add_find_command},
        {{"sort", "place"}, add_place_commands},
        {{"devices", "clock"}, add_clock_commands},
        {{"tag", "confirm", "accept"}, add_tag_commands},
        {{"bin"}, add_bin_commands},
        {{"undo", "redo"}, add_history_commands},
        {{"check", "bursts"}, add_check_commands},
        {{"coverage", "waive"}, add_coverage_commands},
        {{"shot-list"}, add_shot_list_commands},
        {{"sign-off", "reopen", "export-record"}, add_sign_off_commands},
        {{"sheet"}, add_sheet_command},
        {{"pairs"}, add_pair_commands},
        {{"pairs"}, add_pair_choice_commands},
        {{"pairs"}, add_pair_like_commands},
        {{"pairs"}, add_pair_picture_command},
        {{"pairs"}, add_pair_progress_command},
        {{"inspiration"}, add_inspiration_commands},
        {{"consent"}, add_consent_commands},
        {{"consent"}, add_consent_paper_commands},
        {{"photo"}, add_photo_commands},
        {{"photo"}, add_hair_only_command},
        {{"may"}, add_may_command},
        {{"portfolio"}, add_portfolio_commands},
        {{"portfolio"}, add_selection_commands},
        {{"portfolio"}, add_gallery_command},
        {{"ledger"}, add_ledger_commands},
        {{"backup", "backups"}, add_backup_commands},
        {{"verify"}, add_verify_command},
        {{"restore"}, add_restore_command},
        {{"safe-to-delete"}, add_safe_to_delete_command},
        {{"lock"}, add_lock_commands},
        {{"help-report"}, add_help_report_command},
        {{"completion"}, add_completion_command}};
    return all;
}

// All of them take longer to make than most of them to run.
void add_commands_for(CommandSet& commands, std::string_view word) {
    const bool known = std::ranges::any_of(
        families(), [&](const Family& family) { return family.answers_to(word); });
    for (const Family& family : families()) {
        if (!known || family.answers_to(word)) family.add(commands);
    }
}

}  // namespace

void add_all_commands(CommandSet& commands) {
    add_commands_for(commands, {});
}

int run_line(int argc, char** argv) {
    CommandSet commands;
    add_commands_for(commands, argc > 1 ? argv[1] : "");
    return commands.run(argc, argv);
}

}  // namespace quarterturn
