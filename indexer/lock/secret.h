#pragma once
// Memory for keys and passphrases: kept out of the swap file where the system lets us, fenced by
// pages that nobody may touch, and wiped when it goes (libsodium's sodium_malloc).

#include <cstddef>
#include <memory>
#include <span>

namespace quarterturn {

class Secret {
  public:
    // Throws std::bad_alloc, and std::runtime_error where libsodium cannot work.
    explicit Secret(std::size_t size);

    unsigned char* data() { return bytes_.get(); }
    const unsigned char* data() const { return bytes_.get(); }
    std::size_t size() const { return size_; }

  private:
    struct Wiped {
        void operator()(unsigned char* bytes) const;
    };

    std::unique_ptr<unsigned char, Wiped> bytes_;
    std::size_t size_;
};

}  // namespace quarterturn
