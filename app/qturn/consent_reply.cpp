#include "app/qturn/consent_reply.h"

#include "app/qturn/names.h"

namespace quarterturn {

nlohmann::json to_json(const Against& against) {
    return {
        {"what", word(against.obstacle)},
        {"client_id", against.client ? nlohmann::json(against.client->value) : nlohmann::json()},
        {"words", against.words}};
}

void add_entries(Reply& reply, const std::vector<ConsentEntry>& entries) {
    for (const ConsentEntry& entry : entries) {
        reply.lines.push_back("  " + number_text(entry.id.value) + "  " + said_words(entry));
        for (const ConsentPaper& paper : entry.papers) {
            reply.lines.push_back("      attached: " + paper.path);
        }
    }
    reply.data["entries"] = json_of_each(entries);
}

}  // namespace quarterturn
