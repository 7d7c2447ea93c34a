#pragma once
// What rows are called when they are listed.

#include <map>
#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

std::string device_name(const Device& device);  // "make model"; "unknown" when the files don't say
std::string number_text(std::int64_t id);       // "#12"

// Reads all names once, for lists that need many of them.
class Names {
  public:
    explicit Names(Library& library);

    std::string client(ClientId id) const;
    std::string wedding(WeddingId id) const;
    std::string look(LookId id) const;
    std::string sitting(SittingId id) const;  // "trial of Ada on 2026-10-03"
    std::string device(DeviceId id) const;

  private:
    std::map<ClientId, std::string> clients_;
    std::map<WeddingId, std::string> weddings_;
    std::map<LookId, std::string> looks_;
    std::map<SittingId, std::string> sittings_;
    std::map<DeviceId, std::string> devices_;
};

}  // namespace quarterturn
