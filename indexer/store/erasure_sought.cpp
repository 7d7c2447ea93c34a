#include "indexer/store/erasure_sought.h"

#include <nlohmann/json.hpp>

namespace quarterturn {

std::string sought_text(const ErasureSought& sought) {
    nlohmann::json weddings = nlohmann::json::array();
    for (const WeddingId wedding : sought.weddings) weddings.push_back(wedding.value);
    nlohmann::json unsure = nlohmann::json::array();
    for (const SaidOfFile& said : sought.unsure) {
        unsure.push_back({{"file", said.file.native()}, {"words", said.words}});
    }
    return nlohmann::json{{"name", sought.name},
                          {"hers_alone", sought.hers_alone},
                          {"checksums", sought.checksums},
                          {"weddings", std::move(weddings)},
                          {"unsure", std::move(unsure)}}  // The names of files may hold any bytes.
        .dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

ErasureSought sought_from(std::string_view text) try {
    const auto json = nlohmann::json::parse(text);
    ErasureSought sought;
    sought.name = json.value("name", std::string{});
    sought.hers_alone = json.value("hers_alone", true);
    sought.checksums = json.value("checksums", std::vector<std::string>{});
    for (const auto& said : json.value("unsure", nlohmann::json::array())) {
        sought.unsure.push_back({said.at("file").get<std::string>(), said.at("words")});
    }
    for (const auto id : json.value("weddings", std::vector<std::int64_t>{})) {
        sought.weddings.push_back(WeddingId{id});
    }
    return sought;
} catch (const nlohmann::json::exception&) {
    return {};
}

}  // namespace quarterturn
