#pragma once
// A session over the example library, and screens that say what was asked of them.

#include <atomic>

#include "indexer/image/decode.h"
#include "tests/support/example_library.h"
#include "tests/ui/support/print.h"
#include "ui/shell/screen.h"
#include "ui/shell/session.h"

namespace quarterturn {

// No test of the shell needs a picture.
class NoDecoder final : public Decoder {
  public:
    Decoded decode(const DecodeRequest&) override {
        Decoded decoded;
        decoded.refused = "there is no decoder in this test";
        decoded.nothing_opens = nothing_opens;
        return decoded;
    }

    std::atomic<bool> nothing_opens = false;
};

struct OpenSession {
    OpenSession() { problem = session.open(example.folder / "library"); }

    ExampleLibrary example;
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    QString problem;
};

class SayingScreen : public Screen {
  public:
    QString help() const override { return QStringLiteral("how this screen is used"); }
    void refresh() override { ++refreshed; }
    void arrive(const Place& place) override { arrived = place; }
    bool is_for_client() const override { return client_looks; }

    int refreshed = 0;
    std::optional<Place> arrived;
    bool client_looks = false;
};

}  // namespace quarterturn
